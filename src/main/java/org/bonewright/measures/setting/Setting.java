package org.bonewright.measures.setting;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether bone is fixed for the first time or again. */
final class Setting implements Measure {

  private static final Set<Outcome.Result> MEANT_TO_LAST =
      EnumSet.of(Outcome.Result.FAILED, Outcome.Result.UNITED, Outcome.Result.UNDER_WAY);

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
    List<Operation> fixed =
        scene.doneBefore().stream()
            .filter(operation -> operation.fixation().map(f -> !f.isEmpty()).orElse(true))
            .toList();
    if (fixed.stream()
        .anyMatch(operation -> result(operation).map(MEANT_TO_LAST::contains).orElse(false))) {
      return Reading.word("revision", "operated before");
    }
    Optional<Operation> untold =
        fixed.stream()
            .filter(o -> result(o).map(r -> r == Outcome.Result.UNKNOWN).orElse(true))
            .findFirst();
    if (untold.isEmpty()) {
      return Reading.word("fresh", fixed.isEmpty() ? "first fixation" : "only stages before");
    }
    String id = untold.get().id();
    return Reading.words(
        Set.of("fresh", "revision"),
        Kind.FACT,
        "what became of " + id + " is not stated",
        scene.missingInCase(id + "/outcome/result", "What became of " + id + "?"));
  }

  private static Optional<Outcome.Result> result(Operation operation) {
    return operation.outcome().map(Outcome::result);
  }
}
