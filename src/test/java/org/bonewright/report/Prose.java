package org.bonewright.report;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Takes a printed review apart into what a person would read aloud in one go. */
final class Prose {

  /** A line that is not indented further than two places begins something new. */
  private static final Pattern PARAGRAPH = Pattern.compile("\\n(?=\\S| {2}\\S|\\n)");

  /** Sentences end with a stop; the parts of a list are told one by one. */
  private static final Pattern END = Pattern.compile("(?<=[.?!])\\s+(?=[A-Z0-9])|;\\s+|:\\s+");

  private Prose() {}

  /** Return the sentences of a text that was broken into lines. */
  static List<String> sentences(String text) {
    return Arrays.stream(PARAGRAPH.split(text))
        .map(paragraph -> paragraph.strip().replaceAll("\\s+", " "))
        .flatMap(END::splitAsStream)
        .filter(sentence -> !sentence.isBlank())
        .toList();
  }
}
