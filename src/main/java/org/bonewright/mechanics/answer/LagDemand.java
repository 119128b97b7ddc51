package org.bonewright.mechanics.answer;

import java.util.OptionalDouble;

/**
 * What a lag screw carries, that with which it was tightened included.
 *
 * @param at level of its head in mm
 * @param tension N along it
 * @param shear N across it
 * @param moment the larger bending moment of its two ends in N·mm
 * @param bendingStress stress in its core in MPa, with the tension
 * @param capacity pull in N at which its thread strips in one cortex; absent where the bone's
 *     strength or its pitch is not given
 * @param loose whether its head is no longer pulled onto the bone
 */
public record LagDemand(
    double at,
    double tension,
    double shear,
    double moment,
    double bendingStress,
    OptionalDouble capacity,
    boolean loose) {

  /** Return how many times the pull it could bear; absent where it is not pulled or not known. */
  public OptionalDouble margin() {
    return ScrewDemand.margin(capacity, tension);
  }
}
