package org.bonewright.bench;

import java.util.Locale;
import java.util.regex.Pattern;

/** The lines of an answer in text. */
final class BenchLines {

  /** A zero that only rounding has given a minus. */
  private static final Pattern NO_MINUS = Pattern.compile("-(0(?:\\.0+)?)(?![.\\d])");

  private final StringBuilder text = new StringBuilder();

  /** Add a line; its numbers are written alike in every country. */
  void add(String format, Object... values) {
    String line = String.format(Locale.ROOT, format, values);
    text.append(NO_MINUS.matcher(line).replaceAll(" $1")).append('\n');
  }

  /** Return a number without decimals where it has none. */
  static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value + 0.0)
        : String.format(Locale.ROOT, "%s", value);
  }

  /** Return all lines, each with a line feed. */
  String text() {
    return text.toString();
  }
}
