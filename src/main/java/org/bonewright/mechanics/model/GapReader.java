package org.bonewright.mechanics.model;

import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.frame.Six;

/** Reads how the fracture moves at the outer edge of the bone. */
final class GapReader {

  private static final double PERCENT = 100;

  private GapReader() {}

  /**
   * Return the movement.
   *
   * @param w how the distal end moves against the proximal one: apart, towards the plate, across,
   *     and turns about the same
   */
  static GapMovement of(FixedBone fixed, Six w) {
    double radius = fixed.shaft().section().outer() / 2;
    double tilt = radius * Math.hypot(w.aboutAway(), w.aboutAcross());
    double near = w.along() - radius * w.aboutAcross();
    double far = w.along() + radius * w.aboutAcross();
    return new GapMovement(
        near,
        far,
        w.along() - tilt,
        w.along() + tilt,
        Math.hypot(w.away(), w.across()) + radius * Math.abs(w.aboutAlong()),
        strain(near, fixed.fracture().gap()),
        strain(far, fixed.fracture().gap()));
  }

  private static OptionalDouble strain(double movement, double gap) {
    return gap < Fracture.THINNEST_LAYER
        ? OptionalDouble.empty()
        : OptionalDouble.of(PERCENT * movement / gap);
  }
}
