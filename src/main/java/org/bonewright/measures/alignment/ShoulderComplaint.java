package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the shoulder troubles the patient. */
final class ShoulderComplaint implements Measure {

  private static final double PAIN = 4;
  private static final double MOTION = 80;

  @Override
  public Definition definition() {
    return new Definition(
        "shoulder-complaint",
        "The shoulder is in trouble",
        Definition.yesOrNo(),
        "yes for pain of 4 of 10 or more under load, or a joint beside that moves less than 80 % of"
            + " the other side, as last found; no where both are told and neither is so",
        List.of("findings/pain", "findings/joints"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.boneName() != BoneName.CLAVICLE) {
      return new Reading.None("not the clavicle");
    }
    Optional<Quantity> pain = scene.subject().latest(Finding::pain);
    Optional<Quantity> motion = StiffJoint.leastMotion(scene);
    if (pain.map(p -> p.min() >= PAIN).orElse(false)
        || motion.map(m -> m.max() < MOTION).orElse(false)) {
      return Reading.word("yes", "pain or stiffness");
    }
    boolean painless = pain.map(p -> p.max() < PAIN).orElse(false);
    boolean moves = motion.map(m -> m.min() >= MOTION).orElse(false);
    MissingFact missing =
        scene.missingInCase("findings/pain", "How bad is the pain under load, 0 to 10?");
    if (painless && moves) {
      return Reading.word("no", "little pain, and it moves");
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        "pain or motion is not told",
        painless
            ? scene.missingInCase(
                "findings/joints", "How far does the shoulder move, in percent of the other side?")
            : missing);
  }
}
