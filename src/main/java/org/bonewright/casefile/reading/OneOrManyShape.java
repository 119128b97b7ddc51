package org.bonewright.casefile.reading;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A list that may be written as its only element, or as a word that leaves it empty.
 *
 * @param list the list
 * @param word the word; empty where there is none
 */
record OneOrManyShape(ListShape list, String word) implements Shape {

  @Override
  public @Nullable Object read(Spot spot) {
    if (spot.part() instanceof Part.Row) {
      return list.read(spot);
    }
    if (spot.part() instanceof Part.Text text && !word.isEmpty() && text.value().equals(word)) {
      return List.of();
    }
    Object only = list.element().read(spot);
    return only == null ? null : List.of(only);
  }

  @Override
  public String allowed() {
    String or = word.isEmpty() ? "" : ", or the word " + word;
    return list.element().allowed() + ", or a list of such" + or;
  }
}
