package org.bonewright.casefile.reading;

import java.util.Comparator;

/**
 * Where something stands in the text of a file.
 *
 * @param line line, the first one is 1
 * @param column character within the line, the first one is 1
 */
public record Place(int line, int column) implements Comparable<Place> {

  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

  /** Return the place of the character with this index; line feeds end lines. */
  static Place of(CharSequence text, int index) {
    int line = 1;
    int column = 1;
    int end = Math.min(index, text.length());
    for (int i = 0; i < end; i++) {
      column++;
      if (text.charAt(i) == '\n') {
        line++;
        column = 1;
      }
    }
    return new Place(line, column);
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  /** Return the place in words, such as {@code line 3, column 14}. */
  @Override
  public String toString() {
    return "line " + line + ", column " + column;
  }
}
