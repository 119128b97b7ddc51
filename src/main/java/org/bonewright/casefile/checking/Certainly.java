package org.bonewright.casefile.checking;

import org.bonewright.casefile.Quantity;

/**
 * Comparisons of numbers that may be ranges. Each is true only when it holds for every value within
 * the ranges: 3 is certainly below 4 to 6; 3 to 5 is not certainly below 4, nor is 4 below 4.
 */
final class Certainly {

  private Certainly() {}

  /** Return whether one number is below the other, whatever their values. */
  static boolean below(Quantity one, Quantity other) {
    return one.max() < other.min();
  }

  /** Return whether one number is at most the other, whatever their values. */
  static boolean notAbove(Quantity one, Quantity other) {
    return one.max() <= other.min();
  }
}
