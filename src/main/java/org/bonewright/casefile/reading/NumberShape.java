package org.bonewright.casefile.reading;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bonewright.casefile.Between;
import org.jspecify.annotations.Nullable;

/**
 * A number within limits.
 *
 * @param whole whether it must be a whole number, which becomes an {@code int}
 */
record NumberShape(Limits limits, boolean whole) implements Shape {

  private static final Pattern BARE = Pattern.compile("-?(0|[1-9]\\d{0,15})(\\.\\d{1,15})?");

  /** The closed range in which a number lies. */
  record Limits(double min, double max) {

    private static final Limits NONE =
        new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    static Limits of(Optional<Between> between) {
      return between.map(range -> new Limits(range.min(), range.max())).orElse(NONE);
    }

    /** Return these limits narrowed to what an {@code int} can hold. */
    Limits forWhole() {
      double least = Math.max(min, Integer.MIN_VALUE);
      double most = Math.min(max, Integer.MAX_VALUE);
      return new Limits(least, most);
    }

    private String inWords() {
      return equals(NONE) ? "" : " from " + plain(min) + " to " + plain(max);
    }

    static String plain(double number) {
      return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
  }

  /** Return the shape of a component of type {@code int}. */
  static NumberShape whole(Limits limits) {
    return new NumberShape(limits.forWhole(), true);
  }

  /** Return the shape of a component of type {@code double}. */
  static NumberShape decimal(Limits limits) {
    return new NumberShape(limits, false);
  }

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Figure figure)) {
      return refuseOther(spot, allowed());
    }
    double value = figure.value();
    boolean fits = value >= limits.min() && value <= limits.max();
    if (!fits || (whole && value != Math.rint(value))) {
      return spot.refuse(allowed());
    }
    if (whole) {
      return (int) value;
    }
    return value;
  }

  /** Refuse what is not a number; a text is told about units and quotation marks. */
  static @Nullable Object refuseOther(Spot spot, String allowed) {
    if (!(spot.part() instanceof Part.Text text)) {
      return spot.refuse(allowed);
    }
    Optional<String> hint =
        BARE.matcher(text.value()).matches()
            ? Optional.of("Write " + text.value() + " without quotation marks.")
            : Optional.of("The unit is fixed by the field's name; write the bare number.");
    return spot.refuse(text.inWords(), allowed, hint);
  }

  @Override
  public String allowed() {
    return (whole ? "a whole number" : "a number") + limits.inWords();
  }
}
