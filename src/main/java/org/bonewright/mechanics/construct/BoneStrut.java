package org.bonewright.mechanics.construct;

import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * A strut on the axis of the bone, across the fracture.
 *
 * @param material of the strut
 * @param section its tube
 * @param from level of its proximal end in mm
 * @param to level of its distal end in mm
 */
public record BoneStrut(Material material, HollowCircle section, double from, double to) {}
