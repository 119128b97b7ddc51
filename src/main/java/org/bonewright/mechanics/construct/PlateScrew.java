package org.bonewright.mechanics.construct;

import org.bonewright.mechanics.section.Material;

/**
 * A screw through a plate.
 *
 * @param plate index of its plate
 * @param at level in mm
 * @param material of the screw
 * @param core diameter of its core in mm
 * @param major outer diameter of its thread in mm
 * @param pitch distance between two turns in mm
 * @param near share of the thread that the near cortex holds, from 0 to 1
 * @param far share of the thread that the far cortex holds, from 0 to 1; 0 where it does not reach
 *     it
 * @param head how its head sits in the plate
 * @param rigid whether its bending is to be left out, for checks
 * @param stiffens whether its head stiffens the plate around it
 */
public record PlateScrew(
    int plate,
    double at,
    Material material,
    double core,
    double major,
    double pitch,
    double near,
    double far,
    Head head,
    boolean rigid,
    boolean stiffens) {

  /** How a head sits in the plate. */
  public sealed interface Head {

    /** Locked: it cannot tilt, and the plate need not touch the bone. */
    record Locked() implements Head {}

    /**
     * Pressed: the screw pulls the plate onto the bone, and the head can tilt.
     *
     * @param force pull of the screw in N, at least 0
     * @param radius of the patch where the plate presses, in mm
     * @param friction coefficient between plate and bone
     */
    record Pressed(double force, double radius, double friction) implements Head {}
  }
}
