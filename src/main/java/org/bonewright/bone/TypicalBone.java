package org.bonewright.bone;

import java.util.List;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Patient;

/**
 * Dimensions of adult bones at mid-shaft, in mm, used as ranges where a case states none.
 *
 * <p>Lengths, and the canals of femur, tibia and radius, follow series seen as abstracts (humerus,
 * femur and tibia radiographic and CT series; forearm CT series of 97 patients); everything else is
 * from memory. A row that gives a single number is used as ± 10 %.
 */
record TypicalBone(Range length, Range outer, Range canal, Range cortex) {

  /** Two bounds in mm. */
  record Range(double min, double max) {
    static Range around(double value) {
      return new Range(value * 0.9, value * 1.1);
    }

    Range joined(Range other) {
      return new Range(Math.min(min, other.min), Math.max(max, other.max));
    }
  }

  /** Return the row for the bone; where the sex is not stated, both rows together. */
  static TypicalBone of(BoneName bone, List<Patient.Sex> sexes) {
    if (sexes.equals(List.of(Patient.Sex.MALE))) {
      return male(bone);
    }
    if (sexes.equals(List.of(Patient.Sex.FEMALE))) {
      return female(bone);
    }
    TypicalBone one = male(bone);
    TypicalBone two = female(bone);
    return new TypicalBone(
        one.length.joined(two.length),
        one.outer.joined(two.outer),
        one.canal.joined(two.canal),
        one.cortex.joined(two.cortex));
  }

  private static TypicalBone male(BoneName bone) {
    return switch (bone) {
      case HUMERUS -> row(290, 350, 21, 22, 10, 12, 4.0, 6.0);
      case FEMUR -> row(403, 493, 26.5, 30, 10.5, 13.5, 5.5, 9);
      case TIBIA -> row(345, 405, 24, 29, 10, 12, 5.4, 9);
      case RADIUS -> row(225, 265, 13, 15, 5, 6, 3.1, 3.9);
      case ULNA -> row(245, 285, 14, 15, 4.5, 6, 3.6, 4.4);
      case CLAVICLE -> row(140, 170, 12, 13, 5, 6, 2.4, 3.0);
    };
  }

  private static TypicalBone female(BoneName bone) {
    return switch (bone) {
      case HUMERUS -> row(270, 325, 18, 20, 9, 10, 3.2, 5.0);
      case FEMUR -> row(377, 461, 25.6, 28, 9.5, 13, 4.5, 8);
      case TIBIA -> row(320, 375, 21, 26, 9, 10.5, 4.5, 7);
      case RADIUS -> row(205, 240, 11, 13, 4.5, 5.5, 2.7, 3.3);
      case ULNA -> row(222, 258, 12, 13, 4, 5, 3.1, 3.7);
      case CLAVICLE -> row(128, 158, 10, 11, 4, 5, 2.1, 2.5);
    };
  }

  private static TypicalBone row(
      double lengthMin,
      double lengthMax,
      double outerMin,
      double outerMax,
      double canalMin,
      double canalMax,
      double cortexMin,
      double cortexMax) {
    return new TypicalBone(
        new Range(lengthMin, lengthMax),
        new Range(Range.around(outerMin).min(), Range.around(outerMax).max()),
        new Range(canalMin, canalMax),
        new Range(cortexMin, cortexMax));
  }
}
