package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The length of the longest plate. */
final class PlateLength implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-length",
        "Plate length",
        Definition.millimetres(),
        "as stated; else (holes − 1) × spacing + 2 × end offset of the plate's family, ± 10 %; the"
            + " longest plate counts",
        List.of("operations/fixation/lengthMm", "operations/fixation/family"),
        "generic plate sizes, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    String id = plate.get().plate().id();
    MissingFact missing =
        scene.missing("fixation/" + id + "/lengthMm", "How long is " + id + ", in mm?");
    return plate
        .get()
        .length()
        .map(length -> Reading.number(length, length.basis(), missing))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
