package org.bonewright.principles;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the names in braces that stand in the words of cards. */
final class Slots {

  private static final Pattern SLOT = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  private Slots() {}

  /**
   * Return a text with every name in braces replaced.
   *
   * @param value what stands for a name
   */
  static String filled(String text, UnaryOperator<String> value) {
    return SLOT.matcher(text)
        .replaceAll(slot -> Matcher.quoteReplacement(value.apply(slot.group(1))));
  }
}
