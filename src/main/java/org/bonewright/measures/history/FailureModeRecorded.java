package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the file says how the operation failed. */
final class FailureModeRecorded implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failure-mode-recorded",
        "How it failed is on file",
        Definition.yesOrNo(),
        "yes when a mode of failure is stated, else no",
        List.of("operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<FailureMode> mode = scene.operation().outcome().flatMap(Outcome::mode);
    return Reading.words(
        Set.of(mode.isPresent() ? "yes" : "no"),
        Kind.RECORD,
        mode.map(Words::of).orElse("not stated"));
  }
}
