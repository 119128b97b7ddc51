package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a conventional screw stripped while it pulled the bone to the plate. */
final class ConventionalStripped implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "conventional-screw-stripped",
        "A conventional screw stripped",
        Definition.yesOrNo(),
        "yes when a conventional screw of the longest plate is recorded as stripped",
        List.of("operations/fixation/screws/state"),
        "bookkeeping; a screw of which nothing is recorded is taken to hold, as in counting hold");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("plate-used", "no")) {
      return Reading.word("no", "no plate in place");
    }
    Optional<List<ScrewRow>> rows =
        scene.mainPlate().map(PlacedPlate::plate).flatMap(plate -> plate.screws());
    if (rows.isEmpty()) {
      return FragmentScrews.unknown(scene);
    }
    return rows.get().stream()
            .filter(row -> row.type() != ScrewRow.Type.LOCKING)
            .anyMatch(row -> row.state().equals(Optional.of(ScrewRow.State.STRIPPED)))
        ? Reading.word("yes", "a conventional screw stripped")
        : Reading.word("no", "none recorded as stripped");
  }
}
