package org.bonewright.mechanics.section;

/**
 * The nominal stresses of a plate at one level, each without sign, in MPa, before any factor for
 * the notch of a hole.
 *
 * @param tension from the force along the plate
 * @param bending from bending away from the bone, at its surface
 * @param atEdge from bending across the bone, at the edge of the plate
 * @param besideHole the same at the edge of the hole; {@code atEdge} where there is none
 * @param shear from torsion
 */
public record PlateStress(
    double tension, double bending, double atEdge, double besideHole, double shear) {

  /**
   * Return the stresses where there is no hole.
   *
   * @param section of the plate
   * @param axial N along it
   * @param weak bending in N·mm away from the bone
   * @param strong bending in N·mm across the bone
   * @param torque N·mm about it
   */
  public static PlateStress solid(
      Rectangle section, double axial, double weak, double strong, double torque) {
    double edge = Math.abs(strong) * section.width() / 2 / section.strong();
    return new PlateStress(
        Math.abs(axial) / section.area(),
        Math.abs(weak) * section.thickness() / 2 / section.weak(),
        edge,
        edge,
        Math.abs(torque) * section.thickness() / section.torsion());
  }

  /** Return the stresses on what a hole leaves of the plate, under the same. */
  public static PlateStress atHole(
      PlateHole hole, double axial, double weak, double strong, double torque) {
    Rectangle section = hole.plate();
    double across = Math.abs(strong) / hole.netStrong();
    double left = 1 - hole.diameter() / section.width();
    return new PlateStress(
        Math.abs(axial) / hole.netArea(),
        Math.abs(weak) * section.thickness() / 2 / hole.netWeak(),
        across * section.width() / 2,
        across * hole.diameter() / 2,
        Math.abs(torque) * section.thickness() / (section.torsion() * left));
  }

  /** Return the largest stress along the plate on the section that is left. */
  public double nominal() {
    return bending + tension + atEdge;
  }

  /**
   * Return a stress along the plate joined with the shear here, after von Mises.
   *
   * @param along MPa
   */
  public double withShear(double along) {
    return Math.sqrt(along * along + 3 * shear * shear);
  }
}
