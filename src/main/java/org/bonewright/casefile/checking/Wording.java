package org.bonewright.casefile.checking;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.casefile.Quantity;

/** Values as they stand in a message. */
final class Wording {

  private Wording() {}

  /** Return a length, such as {@code 12.5 mm} or {@code 10 to 12 mm}. */
  static String mm(Quantity quantity) {
    return number(quantity) + " mm";
  }

  /** Return a length in mm. */
  static String mm(double value) {
    return number(value) + " mm";
  }

  /** Return a day, such as {@code day 12} or {@code day 10 to 12}. */
  static String day(Quantity quantity) {
    return "day " + number(quantity);
  }

  /** Return a number or a range of numbers. */
  static String number(Quantity quantity) {
    return quantity.isExact()
        ? number(quantity.min())
        : number(quantity.min()) + " to " + number(quantity.max());
  }

  /** Return a number, rounded to hundredths, without trailing zeros. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** Return a constant in words: {@code PLATE_BENT} is {@code plate bent}. */
  static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Return a constant as it is written in a file: {@code PLATE_BENT} is {@code plate-bent}. */
  static String asWritten(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Return a count with its noun: {@code 1 hole}, {@code 2 holes}. */
  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** Return names one after another, or other words when there are none. */
  static String list(Collection<String> names, String ifNone) {
    List<String> distinct = names.stream().distinct().toList();
    return distinct.isEmpty() ? ifNone : String.join(", ", distinct);
  }

  /** Return hole numbers one after another. */
  static String holes(Collection<Integer> holes) {
    return holes.stream().sorted().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
