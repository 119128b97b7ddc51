package org.bonewright.mechanics.answer;

import java.util.OptionalDouble;

/**
 * What a screw carries.
 *
 * @param plate index of its plate
 * @param at level in mm
 * @param pullOff tension in N across the whole connection of plate and bone; negative presses
 * @param shear N across the screw at the underside of the plate, friction under it included
 * @param moment the larger bending moment in N·mm at the plate and at the near cortex
 * @param bendingStress stress in its core in MPa
 * @param capacity pull in N at which its thread strips; absent where the bone's strength is not
 *     given
 * @param state what its grip on the plate has lost: stick, tilt, slip, lifted
 * @param bearing pressure in MPa of its thread on the near cortex: the shear in its neck over outer
 *     diameter times thickness of the cortex
 * @param crushing pressure in MPa at which that bone is crushed; absent where it is not given
 */
public record ScrewDemand(
    int plate,
    double at,
    double pullOff,
    double shear,
    double moment,
    double bendingStress,
    OptionalDouble capacity,
    String state,
    double bearing,
    OptionalDouble crushing) {

  /** A pull below this share of what it holds is none: what is left of it is rounding. */
  private static final double NO_PULL = 1e-6;

  /**
   * Return the share of its strength to which the bone is pressed; absent where it is not known.
   */
  public OptionalDouble crushed() {
    return crushing.isPresent()
        ? OptionalDouble.of(bearing / crushing.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Return how many times the pull it could bear; absent where it is not pulled or not known. */
  public OptionalDouble margin() {
    return margin(capacity, pullOff);
  }

  /** Return how many times a pull a thread could bear; absent where there is none to speak of. */
  static OptionalDouble margin(OptionalDouble capacity, double pull) {
    return capacity.isPresent() && pull > NO_PULL * capacity.getAsDouble()
        ? OptionalDouble.of(capacity.getAsDouble() / pull)
        : OptionalDouble.empty();
  }
}
