package org.bonewright.mechanics.answer;

/**
 * How stiff a construct is, end to end.
 *
 * @param axial N/mm, pressed
 * @param bendingWeakPlus N·m/deg bent so that the side of the first plate is pressed
 * @param bendingWeakMinus N·m/deg bent the other way
 * @param bendingStrong N·m/deg across
 * @param torsion N·m/deg
 */
public record Stiffness(
    double axial,
    double bendingWeakPlus,
    double bendingWeakMinus,
    double bendingStrong,
    double torsion) {}
