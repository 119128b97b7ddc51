package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the nail of the operation before broke. */
final class NailBrokeBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nail-broke-before",
        "The nail before broke",
        Definition.yesOrNo(),
        "yes when the last operation that was meant to unite the bone failed with a broken nail",
        List.of("operations/outcome/result", "operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return Reading.word("no", "no operation before");
    }
    String id = then.get().operation().id();
    Optional<FailureMode> mode = then.get().operation().outcome().flatMap(Outcome::mode);
    if (mode.isPresent()) {
      boolean broke = mode.get().isA(FailureMode.NAIL_BROKEN);
      return Reading.word(broke ? "yes" : "no", id + ": " + Words.of(mode.get()));
    }
    boolean lasted =
        then.get()
            .operation()
            .outcome()
            .map(Outcome::result)
            .filter(r -> r == Outcome.Result.UNITED || r == Outcome.Result.UNDER_WAY)
            .isPresent();
    return lasted
        ? Reading.word("no", id + " did not fail")
        : Reading.unknown(
            scene.missingInCase(id + "/outcome/mode", "How did " + id + " fail: what broke?"));
  }
}
