package org.bonewright.mechanics.fatigue;

/**
 * Fatigue of a metal under a steady and an alternating stress: Goodman's line; beyond it a straight
 * line of stress over cycles, both on logarithmic scales, through two points: 0.9 of the tensile
 * strength at 10³ cycles and the endurance limit at 10⁷ (a convention of textbooks, from memory).
 *
 * @param endurance smooth limit at 10⁷ cycles, fully reversed, in MPa
 * @param strength tensile strength in MPa
 */
public record Goodman(double endurance, double strength) {

  private static final double SENSITIVITY = 0.9;
  private static final double SHORT_SHARE = 0.9;
  private static final double SHORT_CYCLES = 1e3;
  private static final double LONG_CYCLES = 1e7;

  /**
   * Return how a stress concentration counts in fatigue.
   *
   * @param concentration elastic factor, at least 1
   */
  public static double notch(double concentration) {
    return 1 + SENSITIVITY * (concentration - 1);
  }

  /**
   * Return how far a stress uses up what the metal bears for ever: above 1 it will break in time.
   *
   * @param alternating half of the range of the stress in MPa, notch included
   * @param mean steady stress in MPa; below zero it counts as none
   */
  public double use(double alternating, double mean) {
    return alternating / endurance + Math.max(0, mean) / strength;
  }

  /**
   * Return after how many cycles it breaks; infinite where it lasts, 0 where the steady stress
   * alone is beyond the strength.
   */
  public double cycles(double alternating, double mean) {
    double left = 1 - Math.max(0, mean) / strength;
    if (left <= 0) {
      return 0;
    }
    double reversed = alternating / left;
    if (reversed <= endurance) {
      return Double.POSITIVE_INFINITY;
    }
    double slope =
        Math.log(LONG_CYCLES / SHORT_CYCLES) / Math.log(SHORT_SHARE * strength / endurance);
    return LONG_CYCLES * Math.pow(reversed / endurance, -slope);
  }
}
