package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the operation itself failed, seen from today. */
final class OperationFailed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "operation-failed",
        "The operation failed",
        Definition.yesOrNo(),
        "yes when it ended as failed; no when it united, is under way, was a stage that did what it"
            + " was for, or is still to be done",
        List.of("operations/outcome/result"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.subject().planned()) {
      return Reading.word("no", "still to be done");
    }
    Optional<Outcome.Result> result = scene.operation().outcome().map(Outcome::result);
    if (result.isEmpty() || result.get() == Outcome.Result.UNKNOWN) {
      return Reading.unknown(scene.missing("outcome/result", "What became of the operation?"));
    }
    return Reading.word(
        result.get() == Outcome.Result.FAILED ? "yes" : "no", Words.of(result.get()));
  }
}
