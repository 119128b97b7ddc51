package org.bonewright.measures.care;

import java.util.List;
import org.bonewright.casefile.Aftercare;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether it is settled from when the joints beside move. */
final class MotionPlanned implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "motion-settled",
        "Start of motion settled",
        Definition.yesOrNo(),
        "yes when a day is given from which joints move; not in a plan: no",
        List.of("operations/aftercare/motionFromDay"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.operation().aftercare().flatMap(Aftercare::motionFromDay).isPresent()) {
      return Reading.word("yes", "a day is given");
    }
    return scene.subject().planned()
        ? Reading.word("no", "no day given")
        : Reading.unknown(
            scene.missing("aftercare/motionFromDay", "From which day were the joints moved?"));
  }
}
