package org.bonewright.mechanics.construct;

/**
 * What presses the fragments together before any load.
 *
 * @param force in N, above zero
 * @param towardsPlate how far from the axis of the bone it acts, in mm, positive towards the first
 *     plate
 */
public record Compression(double force, double towardsPlate) {}
