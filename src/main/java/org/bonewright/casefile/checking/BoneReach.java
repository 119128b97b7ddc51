package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.checking.Procedure.Scene;
import org.bonewright.casefile.reading.Problem.Severity;

/**
 * From where to where a bone reaches, in the levels of its file.
 *
 * <p>Where its length is stated, a level beyond an end is a warning, and an error once it is more
 * than a twentieth of the length beyond: some measure a tibia to the ankle joint, others to the tip
 * of the malleolus. Without a stated length only what no usual bone reaches is a warning. Levels
 * run along the axis, and the clavicle's axis is curved: it gets a tenth more than the straight
 * length.
 *
 * @param name the bone
 * @param length its largest possible length
 * @param near the lowest level that its near end may have
 * @param far the highest level that its far end may have
 * @param stated whether the length is stated
 * @param worst the severity of what lies far beyond an end
 */
record BoneReach(
    String name, double length, double near, double far, boolean stated, Severity worst) {

  private static final double SLACK = 0.05;
  private static final double CURVE_OF_CLAVICLE = 1.1;
  private static final Quantity NO_OFFSET = Quantity.of(0);

  /** Return the reach of the bone that a list of operations is about. */
  static BoneReach of(CaseFile file, Scene scene) {
    if (scene == Scene.COMPANION && file.companion().isPresent()) {
      return of(file.companion().get().bone(), Optional.empty(), NO_OFFSET);
    }
    Bone bone = file.bone();
    return of(bone.name(), bone.lengthMm(), bone.landmarkOffsetMm().orElse(NO_OFFSET));
  }

  private static BoneReach of(Enum<?> bone, Optional<Quantity> stated, Quantity offset) {
    AdultLength adult = AdultLength.of(bone);
    double straight = stated.orElseGet(adult::believed).max();
    double length = adult == AdultLength.CLAVICLE ? straight * CURVE_OF_CLAVICLE : straight;
    return new BoneReach(
        Wording.words(bone),
        length,
        -offset.max(),
        length - offset.min(),
        stated.isPresent(),
        stated.isPresent() ? Severity.ERROR : Severity.WARNING);
  }

  /** Return the same reach for what may lie beyond it all the same: never more than a warning. */
  BoneReach withoutCertainty() {
    return new BoneReach(name, length, near, far, stated, Severity.WARNING);
  }

  /** Return how severe it is that a level lies this far along; empty when it may be on the bone. */
  Optional<Severity> beyondFarEnd(double level) {
    return severity(level - far);
  }

  /** Return how severe it is that a level lies this far up; empty when it may be on the bone. */
  Optional<Severity> beforeNearEnd(double level) {
    return severity(near - level);
  }

  /** Return how severe it is that something on the bone has this length. */
  Optional<Severity> shorterThan(double other) {
    return severity(other - length);
  }

  private Optional<Severity> severity(double excess) {
    if (excess <= 0) {
      return Optional.empty();
    }
    return Optional.of(excess > SLACK * length ? worst : Severity.WARNING);
  }

  /** Return the bone with its length in words. */
  String inWords() {
    String most = Wording.mm(length);
    if (!stated) {
      return "a " + name + ", " + most + " at the very most";
    }
    return name.equals(Wording.words(AdultLength.CLAVICLE))
        ? "the " + name + ", " + most + " along its curve"
        : "the " + name + " of " + most;
  }

  /** Return which levels are on the bone, in words. */
  String levels() {
    return "levels from " + Wording.number(near) + " to " + Wording.mm(far);
  }
}
