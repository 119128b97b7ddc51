package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Which share of the plate's holes is filled. */
final class PlateScrewDensity implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-screw-density",
        "Share of holes filled",
        Definition.ratio(),
        "holes of the longest plate that hold a plate screw or a lag screw, divided by its holes",
        List.of("operations/fixation/screws", "operations/fixation/holes"),
        "Gautier and Sommer, Injury 2003, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    Plate recorded = plate.get().plate();
    if (recorded.screws().isEmpty()) {
      return Reading.unknown(PlateQuestions.screws(scene, recorded));
    }
    if (recorded.holes().isEmpty()) {
      return Reading.unknown(PlateQuestions.holes(scene, recorded));
    }
    int holes = recorded.holes().get();
    long filled = plate.get().allHoles().filter(plate.get()::isFilled).count();
    return Reading.number((double) filled / holes, filled + " of " + holes + " holes filled");
  }
}
