package org.bonewright.measures.force;

import org.bonewright.bone.Dimension;

/**
 * A lag screw that presses ends together which touch.
 *
 * @param azimuth degrees around the bone of the side from which it comes, from where azimuths are
 *     counted
 * @param crossing where it crosses the line: distance from the axis of the bone towards that side,
 *     as a share of the radius
 * @param angle to the line in degrees
 * @param diameter of its thread in mm
 * @param force with which it was tightened in N, as far as its thread bears it
 */
record LagSketch(
    double azimuth, Dimension crossing, Dimension angle, Dimension diameter, Dimension force) {}
