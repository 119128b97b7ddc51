package org.bonewright.mechanics.answer;

/**
 * What a plate carries at one level, about its own axis, and the stress from it in MPa.
 *
 * @param z level in mm
 * @param axial N along the plate, tension positive
 * @param away shear in N away from the bone
 * @param across shear in N across the bone
 * @param weak bending in N·mm that bends it away from the bone
 * @param strong bending in N·mm that bends it across the bone
 * @param torque N·mm about the plate
 * @param nominal stress on the section that is left
 * @param edge stress at the edge of the hole; the nominal one where there is no hole
 * @param equivalent stress at the edge together with shear from torsion
 */
public record PlateCut(
    double z,
    double axial,
    double away,
    double across,
    double weak,
    double strong,
    double torque,
    double nominal,
    double edge,
    double equivalent) {}
