package org.bonewright.mechanics.answer;

/**
 * What a load adds to a strut on the axis of the bone, at the level of the fracture, as resultants
 * on the distal part.
 *
 * @param axial N along the bone, tension positive
 * @param bendingX N·mm about x
 * @param bendingY N·mm about y; positive compresses the side of the first plate
 * @param torque N·mm about the bone
 */
public record StrutCut(double axial, double bendingX, double bendingY, double torque) {}
