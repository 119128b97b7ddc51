package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.JointMotion;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How little the stiffest joint beside moves, where a plan does nothing to protect the line. */
final class StiffJoint implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "stiff-joint-motion",
        "Motion of the stiffest joint beside",
        Definition.percent(),
        "the least motion of a joint beside as last found, in percent of the other side; none for"
            + " an operation of the past, and where the plan gives both a limit of load and the day"
            + " from which joints move",
        List.of("findings/joints", "operations/aftercare"),
        "that load and motion together protect the line: our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.subject().planned()) {
      return new Reading.None("judged in a plan only");
    }
    if (scene.subject().steps().stream().anyMatch(StiffJoint::protects)) {
      return new Reading.None("load and motion are settled");
    }
    MissingFact missing =
        scene.missingInCase(
            "findings/joints", "How far do the joints beside move, in percent of the other side?");
    return leastMotion(scene)
        .map(least -> Reading.number(Dimension.stated(least, ""), "as found", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private static boolean protects(Operation step) {
    return step.aftercare()
        .filter(care -> care.motionFromDay().isPresent())
        .flatMap(Aftercare::load)
        .map(load -> !load.isEmpty())
        .orElse(false);
  }

  /** Return the motion of the stiffest joint in the last finding that tells of any. */
  static Optional<Quantity> leastMotion(Scene scene) {
    List<Quantity> motion =
        scene.subject().findings().stream()
            .map(Finding::joints)
            .filter(joints -> !joints.isEmpty())
            .findFirst()
            .orElse(List.of())
            .stream()
            .map(JointMotion::percent)
            .toList();
    return motion.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Quantity(
                motion.stream().mapToDouble(Quantity::min).min().orElseThrow(),
                motion.stream().mapToDouble(Quantity::max).min().orElseThrow()));
  }
}
