package org.bonewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A page of plain text that grows line by line, wrapped at a fixed width. */
final class Page {

  /** Characters in a line. */
  static final int WIDTH = 96;

  private static final Pattern SPACES = Pattern.compile("\\s+");

  private final List<String> lines = new ArrayList<>();

  /** Add a line as it is. */
  Page line(String text) {
    lines.add(text.stripTrailing());
    return this;
  }

  /** Add an empty line and a title. */
  Page title(String title) {
    return line("").line(title);
  }

  /**
   * Add a paragraph whose first line begins with a mark and whose further lines stand under its
   * text.
   */
  Page hanging(String mark, String text) {
    String indent = " ".repeat(mark.length());
    StringBuilder line = new StringBuilder(mark);
    boolean fresh = true;
    for (String word : SPACES.splitAsStream(text.strip()).toList()) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    return line(line.toString());
  }

  /** Return the whole text, each line ended. */
  String text() {
    return String.join("\n", lines) + "\n";
  }
}
