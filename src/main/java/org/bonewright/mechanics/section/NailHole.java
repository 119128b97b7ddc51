package org.bonewright.mechanics.section;

/**
 * A round hole through a nail, across its axis, and what it leaves of the section. The net section
 * is that of the tube without a slot as wide as the hole (exact for the cut through the middle of
 * the hole). The factor at its edge is that of a plate with a hole under tension after Heywood
 * (from memory), used for the wall of a nail by extension.
 *
 * @param nail the tube
 * @param diameter of the hole in mm, above zero and below the outer diameter of the nail
 */
public record NailHole(HollowCircle nail, double diameter) {

  private static final int STEPS = 64;

  /**
   * Refuses a hole that cuts the nail in two.
   *
   * @throws IllegalArgumentException if the hole is not smaller than the nail
   */
  public NailHole {
    if (!(diameter > 0 && diameter < nail.outer())) {
      throw new IllegalArgumentException("no hole of " + diameter + " in " + nail);
    }
  }

  /** Return the area left beside the hole in mm². */
  public double netArea() {
    return nail.area() - slot(nail.outer(), 0) + slot(nail.inner(), 0);
  }

  /**
   * Return the second moment left in mm⁴ where bending stretches the side on which the hole opens:
   * the worse of the two ways.
   */
  public double netOpenSide() {
    return nail.weak() - slot(nail.outer(), 2) + slot(nail.inner(), 2);
  }

  /** Return the factor at the edge of the hole over the nominal stress beside it. */
  public double factor() {
    return 2 + Math.pow(1 - diameter / nail.outer(), 3);
  }

  /**
   * Return the integral over the slot within a full circle of the distance from the middle, along
   * the hole, to a power of 0 or 2: by Simpson's rule across the width of the slot.
   */
  private double slot(double circle, int power) {
    double half = Math.min(diameter, circle) / 2;
    double step = 2 * half / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double x = -half + i * step;
      double height = Math.sqrt(Math.max(0, circle * circle / 4 - x * x));
      double strip = power == 0 ? 2 * height : 2.0 / 3 * height * height * height;
      double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * strip;
    }
    return sum * step / 3;
  }
}
