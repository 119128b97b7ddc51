package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;

/** A plate said to be broken at an empty hole, or a filled one, has that hole empty, or filled. */
final class BrokenHoleIsFilledAsSaid implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.done()) {
      Optional<Outcome> outcome = procedure.operation().outcome();
      Optional<Integer> hole = outcome.flatMap(Outcome::hole);
      Optional<Boolean> saidToBeFilled =
          outcome.flatMap(Outcome::mode).flatMap(BrokenHoleIsFilledAsSaid::filled);
      if (hole.isPresent() && saidToBeFilled.isPresent()) {
        MetalInTheBone.after(procedure, contents)
            .flatMap(metal -> isFilled(metal, hole.get()))
            .filter(isFilled -> !isFilled.equals(saidToBeFilled.get()))
            .ifPresent(isFilled -> warn(procedure, hole.get(), isFilled, objections));
      }
    }
  }

  private static Optional<Boolean> filled(FailureMode mode) {
    return switch (mode) {
      case PLATE_BROKEN_AT_EMPTY_HOLE -> Optional.of(false);
      case PLATE_BROKEN_AT_FILLED_HOLE -> Optional.of(true);
      default -> Optional.empty();
    };
  }

  /** Return whether the hole holds a screw; absent when it is not clear which plate is meant. */
  private static Optional<Boolean> isFilled(MetalInTheBone metal, int hole) {
    List<Fitted<Plate>> plates = metal.plates();
    if (plates.size() != 1 || PlateHoles.certainlyLack(plates, hole)) {
      return Optional.empty();
    }
    return metal.filled(plates.get(0)).map(filled -> filled.contains(hole));
  }

  private static void warn(Procedure procedure, int hole, boolean isFilled, Objections objections) {
    objections.warn(
        procedure.at().field("outcome").field("hole"),
        isFilled
            ? "a plate broken at an empty hole, and a screw in that hole " + hole
            : "a plate broken at a filled hole, and no screw in that hole " + hole,
        isFilled ? "a hole without a screw" : "a hole with a screw");
  }
}
