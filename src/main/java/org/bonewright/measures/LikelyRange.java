package org.bonewright.measures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.DoubleStream;

/**
 * A number of a model with the range in which it likely lies, rounded for people: as far as the
 * width of the range tells, and three significant digits at most.
 *
 * @param nominal the number in the middle of the samples
 * @param low lower end of the range
 * @param high upper end of the range
 */
record LikelyRange(double nominal, double low, double high) {

  private static final int DIGITS = 3;
  private static final int DIGITS_OF_WIDTH = 2;

  /** Little is not nothing: what would be rounded to 0 keeps one digit, down to hundredths. */
  private static final MathContext ONE_DIGIT = new MathContext(1, RoundingMode.HALF_EVEN);

  private static final int FINEST = 2;

  /** Return all three, as "0.42 mm (likely 0.2–0.9 mm)"; one number where they do not differ. */
  String shown(String unit) {
    String behind = unit.isEmpty() ? "" : " " + unit;
    String middle = number(nominal);
    String range = range();
    return middle.equals(range)
        ? middle + behind
        : middle + behind + " (likely " + range + behind + ")";
  }

  private String range() {
    String from = number(low);
    String to = number(high);
    if (from.equals(to)) {
      return from;
    }
    return Double.isInfinite(high) ? from + " or more" : from + (low < 0 ? " to " : "–") + to;
  }

  /** Return a number of this range, rounded as it is shown. */
  double rounded(double value) {
    return Double.isInfinite(value) ? value : decimal(value).doubleValue();
  }

  private String number(double value) {
    return Double.isInfinite(value) ? "without end" : decimal(value).toPlainString();
  }

  private BigDecimal decimal(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal rounded = exact.setScale(-lastDigit(), RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0 && low >= 0) {
      rounded = exact.round(ONE_DIGIT).setScale(FINEST, RoundingMode.HALF_EVEN);
    }
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  /** Return the power of ten of the last digit that is shown. */
  private int lastDigit() {
    int byValue = power(largest()) - DIGITS + 1;
    double width = high - low;
    return Double.isFinite(width) && width > 0
        ? Math.max(byValue, power(width) - DIGITS_OF_WIDTH + 1)
        : byValue;
  }

  private double largest() {
    return DoubleStream.of(nominal, low, high)
        .filter(Double::isFinite)
        .map(Math::abs)
        .max()
        .orElse(0);
  }

  private static int power(double value) {
    return value == 0 ? 0 : (int) Math.floor(Math.log10(value));
  }
}
