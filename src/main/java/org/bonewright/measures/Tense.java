package org.bonewright.measures;

import java.util.Map;
import java.util.regex.Pattern;

/** The tense of a question: nobody asks what was done in an operation that is still planned. */
final class Tense {

  private static final Map<String, String> PRESENT =
      Map.of("was", "is", "Was", "Is", "were", "are", "Were", "Are", "did", "does");

  private static final Pattern PAST = Pattern.compile("\\b(?:[Ww]as|[Ww]ere|did)\\b");

  private Tense() {}

  /** Return a question in the past, asked in the present. */
  static String present(String question) {
    return PAST.matcher(question)
        .replaceAll(past -> PRESENT.getOrDefault(past.group(), past.group()));
  }
}
