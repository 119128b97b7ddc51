package org.bonewright.mechanics.section;

/**
 * A round hole through a plate, in the middle of its width.
 *
 * @param plate the solid section
 * @param diameter diameter of the hole in mm, from above zero to below the width; of a slot its
 *     width
 */
public record PlateHole(Rectangle plate, double diameter) {

  private static final double SPREAD_WEAK = 1.25;
  private static final double SPREAD_AXIAL = 1.70;
  private static final double SPREAD_STRONG = 1.12;
  private static final double SPREAD_TORSION = 0.35;

  /**
   * Refuses a hole that cuts the plate in two.
   *
   * @throws IllegalArgumentException if the hole is not smaller than the plate is wide
   */
  public PlateHole {
    if (!(diameter > 0 && diameter < plate.width())) {
      throw new IllegalArgumentException("no hole of " + diameter + " in " + plate);
    }
  }

  /** Return the area left beside the hole in mm². */
  public double netArea() {
    return (plate.width() - diameter) * plate.thickness();
  }

  /** Return the second moment left about the weak axis in mm⁴. */
  public double netWeak() {
    return (plate.width() - diameter) * Math.pow(plate.thickness(), 3) / 12;
  }

  /** Return the second moment left about the strong axis in mm⁴. */
  public double netStrong() {
    return plate.thickness() * (Math.pow(plate.width(), 3) - Math.pow(diameter, 3)) / 12;
  }

  /** Return the torsion constant of the two bridges beside the hole in mm⁴. */
  public double netTorsion() {
    return 2 * new Rectangle((plate.width() - diameter) / 2, plate.thickness()).torsion();
  }

  /**
   * Return how much more the plate gives because of this hole while it is empty. The coefficients
   * were fitted to three-dimensional finite elements of one hole, for a hole of 0.30 to 0.42 of the
   * width and 1.1 to 1.4 of the thickness; outside that they are a guess.
   */
  public Give give(Material material) {
    double young = material.young();
    return new Give(
        SPREAD_AXIAL * extra(young * netArea(), young * plate.area()),
        SPREAD_TORSION * extra(material.shear() * netTorsion(), material.shear() * plate.torsion()),
        SPREAD_WEAK * extra(young * netWeak(), young * plate.weak()),
        SPREAD_STRONG * extra(young * netStrong(), young * plate.strong()));
  }

  private double extra(double net, double solid) {
    return diameter * (1 / net - 1 / solid);
  }

  /**
   * Return the factor by which bending away from the bone raises the stress at the edge of the hole
   * over the nominal stress, after Roark's formulas, table 17.1 (width factor from memory; above a
   * hole of 0.3 of the width it is conservative).
   */
  public double bendingFactor() {
    double slim = diameter / plate.thickness();
    double share = diameter / plate.width();
    double wide =
        1.79 + 0.25 / (0.39 + slim) + 0.81 / (1 + slim * slim) - 0.26 / (1 + Math.pow(slim, 3));
    return wide * (1 - 1.04 * share + 1.22 * share * share);
  }

  /** Return the same factor for tension along the plate, after Heywood (from memory). */
  public double tensionFactor() {
    return 2 + Math.pow(1 - diameter / plate.width(), 3);
  }
}
