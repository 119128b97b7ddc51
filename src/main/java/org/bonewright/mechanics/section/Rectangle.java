package org.bonewright.mechanics.section;

/**
 * The solid section of a plate.
 *
 * @param width across the bone in mm, above zero
 * @param thickness away from the bone in mm, above zero
 */
public record Rectangle(double width, double thickness) implements CrossSection {

  /**
   * Refuses what is no plate.
   *
   * @throws IllegalArgumentException if a side is not above zero
   */
  public Rectangle {
    if (!(width > 0) || !(thickness > 0)) {
      throw new IllegalArgumentException("no section: " + width + " by " + thickness);
    }
  }

  @Override
  public double area() {
    return width * thickness;
  }

  @Override
  public double weak() {
    return width * Math.pow(thickness, 3) / 12;
  }

  @Override
  public double strong() {
    return thickness * Math.pow(width, 3) / 12;
  }

  /** Return the torsion constant after Roark's formulas, table of torsion (from memory). */
  @Override
  public double torsion() {
    double a = Math.max(width, thickness);
    double c = Math.min(width, thickness);
    return a * Math.pow(c, 3) * (1.0 / 3 - 0.21 * c / a * (1 - Math.pow(c / a, 4) / 12));
  }

  @Override
  public double shearShare(double poisson) {
    return 10 * (1 + poisson) / (12 + 11 * poisson);
  }
}
