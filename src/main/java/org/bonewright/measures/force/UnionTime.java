package org.bonewright.measures.force;

import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;

/**
 * How long the metal must last: weeks to union, and how often the load comes in a year. Weeks:
 * means of published series where there are some (humerus revision 16 to 24, femur 24 to 28, tibia
 * 26 to 38), the rest from memory. About a million steps a year and leg is a convention of tests
 * (Griffin et al., J Orthop Surg Res 2009, excerpt read), a fifth of it on crutches (our
 * convention); 0.2 to 0.5 million loads a year for an arm is a placeholder of ours.
 */
final class UnionTime {

  private static final double WEEKS_A_YEAR = 52;

  private UnionTime() {}

  /** Return the weeks to union that are usual for a bone. */
  static Dimension weeks(BoneName bone, boolean revision) {
    return switch (bone) {
      case HUMERUS -> revision ? weeks(16, 24) : weeks(12, 18);
      case FEMUR -> revision ? weeks(24, 28) : weeks(16, 24);
      case TIBIA -> revision ? weeks(26, 38) : weeks(14, 26);
      case RADIUS, ULNA -> revision ? weeks(20, 30) : weeks(12, 18);
      case CLAVICLE -> revision ? weeks(16, 24) : weeks(10, 16);
    };
  }

  private static Dimension weeks(double min, double max) {
    return Dimension.assumed(min, max, "usual time to union");
  }

  /** Return how often the load comes until union, under a set of assumptions. */
  static double loads(BoneName bone, boolean revision, Draw draw) {
    boolean leg = bone == BoneName.FEMUR || bone == BoneName.TIBIA;
    double aYear =
        leg
            ? draw.between(200_000, 1_000_000, Assumption.CYCLES)
            : draw.between(200_000, 500_000, Assumption.CYCLES);
    return aYear * draw.in(weeks(bone, revision), Assumption.CYCLES) / WEEKS_A_YEAR;
  }
}
