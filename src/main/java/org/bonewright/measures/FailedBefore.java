package org.bonewright.measures;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Outcome;

/** Whether the operation before this one failed. */
final class FailedBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failed-before",
        "The operation before failed",
        Definition.yesOrNo(),
        "yes when the last operation before this one that was meant to unite the bone ended as"
            + " failed; no when there was none, or it united",
        List.of("operations/outcome/result"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> before = scene.failedBefore();
    if (before.isEmpty()) {
      return Reading.word("no", "no operation before");
    }
    String id = before.get().operation().id();
    Optional<Outcome.Result> result = before.get().operation().outcome().map(Outcome::result);
    if (result.isEmpty()
        || result.get() == Outcome.Result.UNKNOWN
        || result.get() == Outcome.Result.UNDER_WAY) {
      return Reading.unknown(
          scene.missingInCase(id + "/outcome/result", "What became of " + id + "?"));
    }
    return result.get() == Outcome.Result.FAILED
        ? Reading.word("yes", id + " failed")
        : Reading.word("no", id + " " + Words.of(result.get()));
  }
}
