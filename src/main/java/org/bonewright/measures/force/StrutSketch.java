package org.bonewright.measures.force;

import org.bonewright.bone.Dimension;

/**
 * A strut in the canal, across the line.
 *
 * @param from mm from the middle of the line
 * @param to mm from the middle of the line
 * @param outer diameter in mm
 * @param wall mm
 */
record StrutSketch(Dimension from, Dimension to, Dimension outer, Dimension wall) {}
