package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** Whether a conventional screw stripped while it pulled the bone to the plate. */
final class ConventionalStripped implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "conventional-screw-stripped",
        "A conventional screw stripped",
        Definition.yesOrNo(),
        "yes when a conventional screw of any plate is recorded as stripped",
        List.of("operations/fixation/screws/state"),
        "bookkeeping; a screw of which nothing is recorded is taken to hold, as in counting hold");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("plate-used", "no")) {
      return Reading.word("no", "no plate in place");
    }
    List<Plate> plates = scene.construct().of(Plate.class);
    if (plates.stream().anyMatch(ConventionalStripped::stripped)) {
      return Reading.word("yes", "a conventional screw stripped");
    }
    List<MissingFact> untold =
        plates.stream()
            .filter(plate -> plate.screws().isEmpty())
            .map(plate -> screws(scene, plate))
            .toList();
    if (plates.isEmpty() || !scene.certainly("plate-used", "yes")) {
      return Plates.noPlate(scene);
    }
    return untold.isEmpty()
        ? Reading.word("no", "none recorded as stripped")
        : new Reading.Unknown(untold);
  }

  private static boolean stripped(Plate plate) {
    return plate.screws().orElse(List.of()).stream()
        .filter(row -> row.type() != ScrewRow.Type.LOCKING)
        .anyMatch(row -> row.state().equals(Optional.of(ScrewRow.State.STRIPPED)));
  }

  private static MissingFact screws(Scene scene, Plate plate) {
    return scene.missing(
        "fixation/" + plate.id() + "/screws",
        "Which holes of " + plate.id() + " hold which screw?");
  }
}
