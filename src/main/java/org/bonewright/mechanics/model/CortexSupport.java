package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * How one wall holds a screw or a bolt at the middle of its thickness. The transverse factor of 2
 * was chosen against three-dimensional finite elements with fully bonded threads; for a loose
 * thread 1 is reasonable. The axial term is an elastic cylinder in shear.
 */
final class CortexSupport {

  private static final double TRANSVERSE = 2;

  /**
   * Keeps a screw from spinning freely, which nothing else in the model does; too soft to count.
   */
  private static final double SPIN = 1;

  private CortexSupport() {}

  /**
   * Return the six springs, the axis of the screw first.
   *
   * @param material of the wall
   * @param tube the bone or strut
   * @param major outer diameter of the thread in mm
   * @param share share of the thread that holds, above 0 to 1
   */
  static Six springs(Material material, HollowCircle tube, double major, double share) {
    return springs(material, tube.wall(), tube.outer(), major, share);
  }

  /**
   * Return the six springs, the axis of the screw first.
   *
   * @param wall thickness of the wall in mm
   * @param outer width of what it is the wall of in mm
   */
  static Six springs(Material material, double wall, double outer, double major, double share) {
    double across = TRANSVERSE * material.young() * wall * share;
    double along = 2 * Math.PI * material.shear() * wall * share / Math.log(2 * outer / major);
    double rocking = across * wall * wall / 12;
    return new Six(along, across, across, SPIN, rocking, rocking);
  }
}
