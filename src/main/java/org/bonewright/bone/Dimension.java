package org.bonewright.bone;

import java.util.Locale;
import org.bonewright.casefile.Quantity;

/**
 * A dimension that lies somewhere in a range, with the reason why it is believed.
 *
 * @param min smallest value
 * @param max largest value; equal to {@code min} when known exactly
 * @param assumed whether any part of it comes from a table or a convention instead of the case file
 * @param basis where it comes from, in words
 */
public record Dimension(double min, double max, boolean assumed, String basis) {

  /**
   * Refuses bounds in the wrong order.
   *
   * @throws IllegalArgumentException if a bound is not a number or {@code min > max}
   */
  public Dimension {
    if (!(min <= max)) {
      throw new IllegalArgumentException("not a range: " + min + " to " + max);
    }
  }

  /** Return a dimension that the case file states. */
  public static Dimension stated(Quantity quantity, String basis) {
    return new Dimension(quantity.min(), quantity.max(), false, basis);
  }

  /** Return a dimension taken from a table or a convention. */
  public static Dimension assumed(double min, double max, String basis) {
    return new Dimension(min, max, true, basis);
  }

  /** Return the number half way between the bounds. */
  public double middle() {
    return min + (max - min) / 2;
  }

  /** Return the sum of the two ranges. */
  public Dimension plus(Dimension other) {
    return joined(other, min + other.min, max + other.max);
  }

  /** Return the difference of the two ranges. */
  public Dimension minus(Dimension other) {
    return joined(other, min - other.max, max - other.min);
  }

  /** Return the range without regard to sign: how far from zero it lies. */
  public Dimension magnitude() {
    if (min >= 0) {
      return this;
    }
    return max <= 0
        ? new Dimension(-max, -min, assumed, basis)
        : new Dimension(0, Math.max(-min, max), assumed, basis);
  }

  /** Return the range that holds both: it is one of the two, nobody knows which. */
  public Dimension or(Dimension other) {
    return new Dimension(
        Math.min(min, other.min), Math.max(max, other.max), assumed || other.assumed, basis);
  }

  /**
   * Return what the two ranges share, both being true of one thing; this one where they share
   * nothing.
   */
  public Dimension within(Dimension other) {
    double from = Math.max(min, other.min);
    double to = Math.min(max, other.max);
    if (from > to || (from == min && to == max)) {
      return this;
    }
    return new Dimension(from, to, assumed || other.assumed, basis);
  }

  /** Return the range with nought in place of what lies below it. */
  public Dimension notBelowZero() {
    return new Dimension(Math.max(0, min), Math.max(0, max), assumed, basis);
  }

  /** Return the range moved by {@code by}. */
  public Dimension plus(double by) {
    return new Dimension(min + by, max + by, assumed, basis);
  }

  /**
   * Return the quotient of the two ranges.
   *
   * @throws IllegalArgumentException if the divisor is not above zero throughout, or this range
   *     reaches below zero
   */
  public Dimension over(Dimension divisor) {
    if (divisor.min <= 0 || min < 0) {
      throw new IllegalArgumentException("quotient of " + this + " and " + divisor);
    }
    return joined(divisor, min / divisor.max, max / divisor.min);
  }

  /** Return the larger of the two, bound by bound. */
  public Dimension atLeast(Dimension floor) {
    if (min >= floor.max) {
      return this;
    }
    if (max <= floor.min) {
      return floor;
    }
    return joined(floor, Math.max(min, floor.min), Math.max(max, floor.max));
  }

  /** Return the same range with another reason. */
  public Dimension because(String newBasis) {
    return new Dimension(min, max, assumed, newBasis);
  }

  /** Return the numbers as people write them: "12", "11.5–13". */
  public String numbers() {
    if (Double.isInfinite(max) && min < max) {
      return number(min) + " or more";
    }
    return min == max ? number(min) : number(min) + (min < 0 ? " to " : "–") + number(max);
  }

  /** Return one number with as many decimals as it needs, at most two for small ones. */
  public static String number(double value) {
    double shown = Math.abs(value) >= 100 ? Math.rint(value) : Math.rint(value * 100) / 100;
    if (Math.abs(value) >= 10 && Math.abs(value) < 100) {
      shown = Math.rint(value * 10) / 10;
    }
    return shown == Math.rint(shown)
        ? String.format(Locale.ROOT, "%d", (long) shown)
        : String.format(Locale.ROOT, "%s", shown);
  }

  private Dimension joined(Dimension other, double newMin, double newMax) {
    String both = basis.equals(other.basis) ? basis : basis + "; " + other.basis;
    return new Dimension(newMin, newMax, assumed || other.assumed, both);
  }
}
