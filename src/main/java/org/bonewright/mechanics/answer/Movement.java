package org.bonewright.mechanics.answer;

/**
 * A movement.
 *
 * @param dx mm towards the first plate
 * @param dy mm across
 * @param dz mm along the bone
 * @param rx rad about x
 * @param ry rad about y
 * @param rz rad about the bone
 */
public record Movement(double dx, double dy, double dz, double rx, double ry, double rz) {}
