package org.bonewright.mechanics.model;

import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.section.Material;

/**
 * The patch under a pressed screw where the plate rests on the bone: how stiff it is, and what it
 * can bear before it tilts, slips or lifts. Stiffness of a circular patch on an elastic half-space:
 * Mindlin; Johnson, Contact Mechanics (from memory).
 *
 * @param head the screw that presses
 * @param bone the cortex on which it presses
 */
record Patch(Head.Pressed head, Material bone) {

  /** Return its springs while it has lost nothing: away from the bone first, then along it. */
  Six springs() {
    double a = head.radius();
    double star = bone.young() / (1 - bone.poisson() * bone.poisson());
    double across = 8 * bone.shear() * a / (2 - bone.poisson());
    double twist = 16.0 / 3 * bone.shear() * a * a * a;
    double tilt = 4.0 / 3 * star * a * a * a;
    return new Six(2 * star * a, across, across, twist, tilt, tilt);
  }

  /**
   * Return by how much a patch carries more than it can bear before it loses what it has, as a
   * share of what it bears unloaded; without a limit below zero where it has lost that.
   *
   * @param next what it would lose
   * @param carried what it carries: six numbers
   */
  double excess(Change next, PatchStand stand, Six carried) {
    double force = head.force();
    double pressing = Math.max(0, force - carried.along());
    return switch (next) {
      case STICK, PULLED, TOUCHES, LOOSENS -> Double.NEGATIVE_INFINITY;
      case LIFTED -> stand.lifted() ? Double.NEGATIVE_INFINITY : carried.along() / force - 1;
      case SLIP ->
          stand.slid()
              ? Double.NEGATIVE_INFINITY
              : (Math.hypot(carried.away(), carried.across()) - head.friction() * pressing) / force;
      case TILT ->
          stand.tilted()
              ? Double.NEGATIVE_INFINITY
              : Math.hypot(carried.aboutAway(), carried.aboutAcross()) / (force * kern())
                  - pressing / force;
    };
  }

  /** Return how far from its middle a patch may be pressed without lifting at its edge, in mm. */
  private double kern() {
    return head.radius() / 4;
  }
}
