package org.bonewright.measures;

import java.util.List;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;

/** Whether an earlier plate broke at an empty hole. */
final class BrokeAtEmptyHole implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "broke-at-empty-hole-before",
        "An earlier plate broke at an empty hole",
        Definition.yesOrNo(),
        "yes when an earlier operation ended with a plate broken at an empty hole",
        List.of("operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    boolean broke =
        scene.subject().before().stream()
            .flatMap(operation -> operation.outcome().stream())
            .map(Outcome::mode)
            .anyMatch(
                mode -> mode.equals(java.util.Optional.of(FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE)));
    return broke
        ? Reading.word("yes", "a plate broke at an empty hole before")
        : Reading.word("no", "no plate recorded as broken at an empty hole");
  }
}
