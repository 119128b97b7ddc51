package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether each end of the plate is held by a screw. */
final class EndHolesFilled implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "end-holes-filled",
        "A screw at each plate end",
        Definition.yesOrNo(),
        "yes when at either end of the longest plate the last hole, or the one next to it, holds a"
            + " screw",
        List.of("operations/fixation/screws", "operations/fixation/holes"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    PlacedPlate placed = plate.get();
    Plate recorded = placed.plate();
    if (recorded.screws().isEmpty()) {
      return Reading.unknown(PlateQuestions.screws(scene, recorded));
    }
    if (recorded.holes().isEmpty()) {
      return Reading.unknown(PlateQuestions.holes(scene, recorded));
    }
    int last = recorded.holes().get();
    boolean near = placed.screwIn(1).isPresent() || placed.screwIn(2).isPresent();
    boolean far = placed.screwIn(last).isPresent() || placed.screwIn(last - 1).isPresent();
    return near && far
        ? Reading.word("yes", "both ends held")
        : Reading.word(
            "no", "no screw in the last two holes of the " + (near ? "far" : "near") + " end");
  }
}
