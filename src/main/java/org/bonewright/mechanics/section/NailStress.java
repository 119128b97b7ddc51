package org.bonewright.mechanics.section;

/**
 * The nominal stresses of a nail at one level, each without sign, in MPa, before any factor for the
 * notch of a hole.
 *
 * @param tension from the force along the nail
 * @param open from bending that stretches the side on which a hole opens; 0 where there is none
 * @param bending from all other bending, at the surface
 * @param shear from torsion, at the surface
 */
public record NailStress(double tension, double open, double bending, double shear) {

  /**
   * Return the stresses where there is no hole.
   *
   * @param nail its tube
   * @param axial N along it
   * @param bending N·mm
   * @param torque N·mm about it
   */
  public static NailStress solid(HollowCircle nail, double axial, double bending, double torque) {
    double radius = nail.outer() / 2;
    return new NailStress(
        Math.abs(axial) / nail.area(),
        0,
        Math.abs(bending) * radius / nail.weak(),
        Math.abs(torque) * radius / nail.torsion());
  }

  /**
   * Return the stresses on what a hole leaves of the nail.
   *
   * @param hole the hole
   * @param axial N along the nail
   * @param open bending in N·mm that stretches the side on which the hole opens
   * @param other bending in N·mm in the plane across, for which the hole lies in the middle
   * @param torque N·mm about the nail
   */
  public static NailStress atHole(
      NailHole hole, double axial, double open, double other, double torque) {
    HollowCircle nail = hole.nail();
    double radius = nail.outer() / 2;
    return new NailStress(
        Math.abs(axial) / hole.netArea(),
        Math.abs(open) * radius / hole.netOpenSide(),
        Math.abs(other) * radius / nail.weak(),
        Math.abs(torque) * radius / nail.torsion());
  }

  /**
   * Return the largest nominal stress along the nail: at the side on which the hole opens, or a
   * quarter turn from it.
   */
  public double nominal() {
    return tension + Math.max(open, bending);
  }

  /**
   * Return a stress along the nail joined with the shear here, after von Mises.
   *
   * @param along MPa
   */
  public double withShear(double along) {
    return Math.sqrt(along * along + 3 * shear * shear);
  }
}
