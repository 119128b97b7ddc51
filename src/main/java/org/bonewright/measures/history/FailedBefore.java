package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the operation before this one failed. */
final class FailedBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failed-before",
        "The operation before failed",
        Definition.yesOrNo(),
        "yes when the last operation before this one that was meant to unite the bone ended as"
            + " failed; no when there was none, it united or is under way, or when this one puts in"
            + " neither metal nor graft and takes out no bolt",
        List.of("operations/outcome/result", "operations/fixation", "operations/biology"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> before = scene.failedBefore();
    if (before.isEmpty()) {
      return Reading.word("no", "no operation before");
    }
    Answer means = meansToUnite(scene);
    if (means == Answer.NO) {
      return Reading.word("no", "neither metal nor graft put in, no bolt taken out");
    }
    String id = before.get().operation().id();
    Optional<Outcome.Result> result = before.get().operation().outcome().map(Outcome::result);
    if (result.isEmpty() || result.get() == Outcome.Result.UNKNOWN) {
      return Reading.unknown(
          scene.missingInCase(id + "/outcome/result", "What became of " + id + "?"));
    }
    if (result.get() != Outcome.Result.FAILED) {
      return Reading.word("no", id + " " + Words.of(result.get()));
    }
    return means == Answer.YES
        ? Reading.word("yes", id + " failed")
        : Reading.unknown(scene.missing("biology", "Was graft put in, and which?"));
  }

  /**
   * Graft of which the past says nothing may have been put in; what a plan does not name is not.
   */
  private static Answer meansToUnite(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    if (steps.stream().anyMatch(FailedBefore::certainlyMeansTo)) {
      return Answer.YES;
    }
    return !scene.subject().planned() && steps.stream().anyMatch(step -> step.biology().isEmpty())
        ? Answer.UNKNOWN
        : Answer.NO;
  }

  private static boolean certainlyMeansTo(Operation step) {
    return step.fixation().map(put -> !put.isEmpty()).orElse(true)
        || step.biology().map(grafts -> !grafts.isEmpty()).orElse(false)
        || step.removed().stream()
            .flatMap(List::stream)
            .anyMatch(removal -> !removal.bolts().isEmpty());
  }
}
