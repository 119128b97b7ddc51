package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.WhichMode;
import org.bonewright.measures.Words;

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
    List<Operation> before = scene.doneBefore();
    if (before.stream().anyMatch(BrokeAtEmptyHole::broke)) {
      return Reading.word("yes", "a plate broke at an empty hole before");
    }
    return before.stream()
        .filter(BrokeAtEmptyHole::mayHave)
        .findFirst()
        .map(
            untold ->
                Reading.words(
                    Set.of("yes", "no"),
                    Kind.FACT,
                    mode(untold)
                        .map(mode -> untold.id() + ": " + Words.of(mode))
                        .orElse("how " + untold.id() + " ended is not recorded"),
                    scene.missingInCase(
                        untold.id() + "/outcome/mode",
                        mode(untold)
                            .map(WhichMode::question)
                            .orElse("How did " + untold.id() + " fail: what broke?"))))
        .orElseGet(() -> Reading.word("no", "no plate recorded as broken at an empty hole"));
  }

  private static boolean broke(Operation operation) {
    return mode(operation).equals(Optional.of(FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE));
  }

  private static Optional<FailureMode> mode(Operation operation) {
    return operation.outcome().flatMap(Outcome::mode);
  }

  private static boolean mayHave(Operation operation) {
    if (mode(operation).isPresent()) {
      return mode(operation).get() == FailureMode.PLATE_BROKEN;
    }
    boolean plate =
        operation
            .fixation()
            .map(put -> put.stream().anyMatch(Plate.class::isInstance))
            .orElse(true);
    boolean failed =
        operation
            .outcome()
            .map(
                outcome ->
                    outcome.result() == Outcome.Result.FAILED
                        || outcome.result() == Outcome.Result.UNKNOWN)
            .orElse(true);
    return plate && failed;
  }
}
