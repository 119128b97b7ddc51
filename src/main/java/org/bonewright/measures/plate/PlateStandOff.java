package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the longest plate stands off the bone where it does so most. */
final class PlateStandOff implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-stand-off",
        "Distance between plate and bone",
        Definition.millimetres(),
        "as stated; the longest plate counts",
        List.of("operations/fixation/standOffMm"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Plate> plate = scene.mainPlate().map(PlacedPlate::plate);
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    String id = plate.get().id();
    MissingFact missing =
        scene.missing(
            "fixation/" + id + "/standOffMm",
            "How far does " + id + " stand off the bone at most, in mm?");
    return plate
        .get()
        .standOffMm()
        .map(q -> Reading.number(Dimension.stated(q, ""), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
