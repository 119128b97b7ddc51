package org.bonewright.mechanics.answer;

/**
 * What a locking bolt carries in its weaker half, between the nail and a cortex.
 *
 * @param at level in mm
 * @param shear N across the bolt
 * @param moment bending of the bolt where it leaves the nail, in N·mm
 * @param bendingStress of its full diameter in MPa, with the force along it
 */
public record BoltDemand(double at, double shear, double moment, double bendingStress) {}
