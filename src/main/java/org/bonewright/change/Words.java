package org.bonewright.change;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The words of a case file for the constants of its records. */
final class Words {

  private Words() {}

  /** Return a constant as a file writes it. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Return a constant as a sentence has it. */
  static String said(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Return the constant that a field names, if it names one. */
  static <E extends Enum<E>> Optional<E> of(Class<E> type, JsonNode field) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> of(constant).equals(field.asString("")))
        .findFirst();
  }

  /** Return a number as a sentence has it: without decimals where it has none. */
  static String number(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
