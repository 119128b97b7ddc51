package org.bonewright.measures;

import java.util.List;
import org.bonewright.casefile.Outcome;

/** Whether bone is fixed for the first time or again. */
final class Setting implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "setting",
        "Fresh fracture or revision",
        Definition.words("fresh", "revision"),
        "revision when an earlier operation put in a fixation, or put in what is not stated, and was"
            + " not just a stage that did what it was for",
        List.of("operations/fixation", "operations/outcome/result"),
        "bookkeeping; leaving stages out is common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    boolean again =
        scene.doneBefore().stream()
            .filter(
                operation ->
                    !operation
                        .outcome()
                        .map(o -> o.result() == Outcome.Result.STAGE_DONE)
                        .orElse(false))
            .anyMatch(operation -> operation.fixation().map(f -> !f.isEmpty()).orElse(true));
    return again
        ? Reading.word("revision", "operated before")
        : Reading.word("fresh", "first fixation");
  }
}
