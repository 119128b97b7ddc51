package org.bonewright.casefile;

/**
 * A number as notes and films give it: exact, or somewhere between two bounds. In a file it is a
 * number or {@code {"min": …, "max": …}}. The unit is in the name of the field that holds it.
 *
 * @param min the smallest value it may have
 * @param max the largest value it may have; equal to {@code min} when the number is exact
 */
public record Quantity(double min, double max) {

  /**
   * Refuses bounds that are not numbers or stand in the wrong order.
   *
   * @throws IllegalArgumentException if a bound is not finite or {@code min > max}
   */
  public Quantity {
    if (!Double.isFinite(min) || !Double.isFinite(max) || min > max) {
      throw new IllegalArgumentException("not a range: " + min + " to " + max);
    }
  }

  /** Return the quantity that is exactly this number. */
  public static Quantity of(double value) {
    return new Quantity(value, value);
  }

  /** Return whether both bounds are the same number. */
  public boolean isExact() {
    return min == max;
  }

  /** Return the number half way between the bounds. */
  public double middle() {
    return min + (max - min) / 2;
  }
}
