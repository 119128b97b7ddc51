package org.bonewright.drawing;

/**
 * How mm become units of the sheet.
 *
 * @param perMm units per mm, the same along and across
 * @param left where the lowest level stands
 * @param from the lowest level, mm
 * @param to the highest level, mm
 */
public record Scale(double perMm, double left, double from, double to) {

  private static final double[] STEPS = {8, 6, 5, 4, 3, 2.5, 2, 1.5, 1};
  private static final double WIDEST = 1300;

  /** Return the largest of a few round scales that brings the levels onto the sheet. */
  static Scale of(double left, double from, double to) {
    for (double step : STEPS) {
      if ((to - from) * step <= WIDEST) {
        return new Scale(step, left, from, to);
      }
    }
    return new Scale(STEPS[STEPS.length - 1], left, from, to);
  }

  /** Return where a level stands on the sheet. */
  public double x(double level) {
    return left + (level - from) * perMm;
  }

  /** Return a length on the sheet. */
  public double units(double mm) {
    return mm * perMm;
  }

  /** Return where the highest level stands. */
  public double right() {
    return x(to);
  }
}
