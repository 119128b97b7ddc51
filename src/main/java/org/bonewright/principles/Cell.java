package org.bonewright.principles;

import org.bonewright.bone.Dimension;

/**
 * A set of values of one need between which no rule of the card can tell: a word, a single number
 * at a limit, an open interval between limits, or nothing at all.
 */
sealed interface Cell {

  /** Return the word, or {@code none}. */
  String word();

  /** Return a number that stands for the cell, or NaN. */
  double number();

  /** Return the cell in words. */
  String shown();

  /** A word. */
  record Text(String word) implements Cell {
    @Override
    public double number() {
      return Double.NaN;
    }

    @Override
    public String shown() {
      return word;
    }
  }

  /**
   * Numbers: one of them if {@code low == high}, else those strictly between.
   *
   * @param low lower end
   * @param high upper end
   * @param number the representative
   */
  record Span(double low, double high, double number) implements Cell {

    /** Return whether some number lies in both. */
    boolean meets(Span other) {
      if (low == high) {
        return other.holds(low);
      }
      return other.low == other.high
          ? holds(other.low)
          : Math.max(low, other.low) < Math.min(high, other.high);
    }

    private boolean holds(double value) {
      return low == high ? value == low : low < value && value < high;
    }

    @Override
    public String word() {
      return "none";
    }

    @Override
    public String shown() {
      if (low == high) {
        return Dimension.number(low);
      }
      if (high == Double.POSITIVE_INFINITY) {
        return "above " + Dimension.number(low);
      }
      return low == Double.NEGATIVE_INFINITY
          ? "below " + Dimension.number(high)
          : "between " + Dimension.number(low) + " and " + Dimension.number(high);
    }
  }

  /** There is no such thing. */
  record Nothing() implements Cell {
    @Override
    public String word() {
      return "none";
    }

    @Override
    public double number() {
      return Double.NaN;
    }

    @Override
    public String shown() {
      return "none";
    }
  }
}
