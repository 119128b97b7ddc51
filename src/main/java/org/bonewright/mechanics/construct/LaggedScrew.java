package org.bonewright.mechanics.construct;

import org.bonewright.mechanics.section.Material;

/**
 * A lag screw across the fracture. Its head pulls on the cortex of one fragment, in which it
 * glides; its thread holds in a cortex of the other.
 *
 * @param azimuth degrees around the bone of the side from which it comes
 * @param head where its head rests
 * @param thread where the cortex that holds its thread has its middle, beyond the fracture
 * @param material of the screw
 * @param core diameter of its core in mm
 * @param major outer diameter of its thread in mm
 * @param pitch distance between two turns in mm; 0 where it is not known
 * @param force with which it pulls when it has been tightened, in N; 0 for a screw that only holds
 * @param headRadius of the patch on which its head rests, in mm
 */
public record LaggedScrew(
    double azimuth,
    Place head,
    Place thread,
    Material material,
    double core,
    double major,
    double pitch,
    double force,
    double headRadius) {

  /**
   * A place in the plane through the axis of the bone in which the screw lies.
   *
   * @param at level in mm
   * @param out distance from the axis of the bone towards the azimuth in mm; negative beyond it
   */
  public record Place(double at, double out) {}
}
