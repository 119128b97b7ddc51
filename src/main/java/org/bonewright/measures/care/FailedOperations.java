package org.bonewright.measures.care;

import java.util.List;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many operations failed before. */
final class FailedOperations implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failed-operations-before",
        "Failed operations before",
        Definition.count(1),
        "operations before that failed; one whose outcome is not told may have",
        List.of("operations/outcome/result"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> before = scene.doneBefore();
    int failed = (int) before.stream().filter(step -> has(step, Outcome.Result.FAILED)).count();
    int open =
        (int)
            before.stream()
                .filter(step -> step.outcome().isEmpty() || has(step, Outcome.Result.UNKNOWN))
                .count();
    return new Reading.Amount(
        failed,
        failed + open,
        Kind.FACT,
        before.size() + " operations before",
        open == 0
            ? List.of()
            : List.of(
                scene.missingInCase(
                    "operations/outcome", "What became of each operation before?")));
  }

  private static boolean has(Operation step, Outcome.Result result) {
    return step.outcome().map(outcome -> outcome.result() == result).orElse(false);
  }
}
