package org.bonewright.change;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.measures.Words;
import tools.jackson.databind.JsonNode;

/** Reads words of a case file, and writes numbers as a sentence has them. */
final class FileWords {

  private FileWords() {}

  /** Return the constant that a field names, if it names one. */
  static <E extends Enum<E>> Optional<E> constant(Class<E> type, JsonNode field) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> Words.written(constant).equals(field.asString("")))
        .findFirst();
  }

  /** Return a number as a sentence has it: without decimals where it has none. */
  static String number(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
