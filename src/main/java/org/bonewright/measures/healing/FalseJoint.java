package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Examination;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a false joint with a cavity was found. */
final class FalseJoint implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "false-joint",
        "False joint",
        Definition.yesOrNo(),
        "as last found before: free motion, a fluid cavity or sealed canals; no where the last word"
            + " is that no motion is felt at the site",
        List.of("findings/falseJoint", "findings/motionAtSite"),
        "series of 76 synovial pseudarthroses, J Trauma 1987, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Examination> found = scene.subject().latest(f -> told(f.falseJoint()));
    if (found.isPresent()) {
      return Reading.word(found.get() == Examination.PRESENT ? "yes" : "no", "as found");
    }
    Optional<Examination> motion = scene.subject().latest(f -> told(f.motionAtSite()));
    return motion.equals(Optional.of(Examination.ABSENT))
        ? Reading.word("no", "no motion felt")
        : Reading.unknown(
            scene.missingInCase(
                "findings/falseJoint",
                "Is there a false joint: free motion, a fluid cavity, or sealed canals on computed"
                    + " tomography or magnetic resonance imaging?"));
  }

  private static Optional<Examination> told(Optional<Examination> examination) {
    return examination.filter(e -> e == Examination.PRESENT || e == Examination.ABSENT);
  }
}
