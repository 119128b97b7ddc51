package org.bonewright.mechanics.section;

/**
 * A tube: bone, nail, strut, or with no bore the core of a screw.
 *
 * @param outer outer diameter in mm, above zero
 * @param inner diameter of the bore in mm, from 0 to below {@code outer}
 */
public record HollowCircle(double outer, double inner) implements CrossSection {

  /**
   * Refuses what is no tube.
   *
   * @throws IllegalArgumentException if the bore is not smaller than the tube
   */
  public HollowCircle {
    if (!(inner >= 0 && outer > inner)) {
      throw new IllegalArgumentException("no tube: " + outer + " with a bore of " + inner);
    }
  }

  /** Return a full circle. */
  public static HollowCircle solid(double diameter) {
    return new HollowCircle(diameter, 0);
  }

  /** Return the thickness of the wall in mm. */
  public double wall() {
    return (outer - inner) / 2;
  }

  /** Return the radius half way through the wall in mm. */
  public double middleRadius() {
    return (outer + inner) / 4;
  }

  /**
   * Return how far from the axis a force along the bone may act before the opposite side of the
   * section comes under tension (the core of the section), in mm.
   */
  public double coreRadius() {
    return (outer * outer + inner * inner) / (8 * outer);
  }

  @Override
  public double area() {
    return Math.PI / 4 * (outer * outer - inner * inner);
  }

  @Override
  public double weak() {
    return Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(inner, 4));
  }

  @Override
  public double strong() {
    return weak();
  }

  @Override
  public double torsion() {
    return 2 * weak();
  }

  @Override
  public double shearShare(double poisson) {
    double m = inner / outer;
    double square = 1 + m * m;
    double top = 6 * (1 + poisson) * square * square;
    return top / ((7 + 6 * poisson) * square * square + (20 + 12 * poisson) * m * m);
  }
}
