package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the names in braces that stand in the words of cards. */
public final class Slots {

  private static final Pattern SLOT = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  private Slots() {}

  /**
   * Return a text with every name in braces replaced.
   *
   * @param value what stands for a name
   */
  static String filled(String text, UnaryOperator<String> value) {
    return String.join("", pieces(text, plain -> plain, value));
  }

  /**
   * Return the pieces of a text, in order.
   *
   * @param plain makes one of the words between two names; never called without words
   * @param slot makes one of a name in braces
   */
  public static <T> List<T> pieces(
      String text, Function<String, T> plain, Function<String, T> slot) {
    List<T> pieces = new ArrayList<>();
    Matcher found = SLOT.matcher(text);
    int from = 0;
    while (found.find()) {
      if (found.start() > from) {
        pieces.add(plain.apply(text.substring(from, found.start())));
      }
      pieces.add(slot.apply(found.group(1)));
      from = found.end();
    }
    if (from < text.length()) {
      pieces.add(plain.apply(text.substring(from)));
    }
    return pieces;
  }
}
