package org.bonewright.mechanics.answer;

/**
 * What a pin of an external fixator carries between the nearest bar and the bone.
 *
 * @param at level in mm
 * @param pull N along the pin, tension positive
 * @param shear N across it
 * @param momentAtBone bending in N·mm in the middle of the near cortex
 * @param momentAtClamp bending in N·mm at the axis of the nearest bar
 * @param bendingStress the larger of the stress in the core of its thread at the near cortex and in
 *     its shank at the clamp, in MPa, with the force along it
 */
public record PinDemand(
    double at,
    double pull,
    double shear,
    double momentAtBone,
    double momentAtClamp,
    double bendingStress) {}
