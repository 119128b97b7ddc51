package org.bonewright.mechanics.model;

import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a function that is not above zero at one end and above it at the other crosses zero:
 * the ITP method of Oliveira and Takahashi, ACM Trans Math Softw 2020 (from memory). It halves the
 * interval in the worst case and is far faster where the function is smooth.
 */
final class Crossing {

  /** How narrow the interval gets, of shares of a load. */
  private static final double NARROW = 1e-12;

  private Crossing() {}

  /**
   * Return a place just beyond the crossing.
   *
   * @param function not above zero at {@code low}; an infinite value is above zero
   * @param high where it is {@code atHigh}, above zero
   */
  static double beyond(
      DoubleUnaryOperator function, double low, double atLow, double high, double atHigh) {
    double a = low;
    double b = high;
    double fa = atLow;
    double fb = atHigh;
    double slowness = 0.1 / (high - low);
    double slack = NARROW * Math.pow(2, Math.ceil(Math.log((high - low) / NARROW) / Math.log(2)));
    while (b - a > NARROW) {
      double middle = (a + b) / 2;
      double trial = middle;
      if (fb < Double.POSITIVE_INFINITY) {
        double secant = (fb * a - fa * b) / (fb - fa);
        double side = Math.signum(middle - secant);
        double nudge = Math.max(slowness * (b - a) * (b - a), NARROW / 4);
        double nearer = nudge <= Math.abs(middle - secant) ? secant + side * nudge : middle;
        double radius = Math.max(slack - (b - a) / 2, 0);
        trial = Math.abs(nearer - middle) <= radius ? nearer : middle - side * radius;
      }
      double there = function.applyAsDouble(trial);
      if (there > 0) {
        b = trial;
        fb = there;
      } else {
        a = trial;
        fa = there;
      }
      slack /= 2;
    }
    return b;
  }
}
