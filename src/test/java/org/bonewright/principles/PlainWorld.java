package org.bonewright.principles;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bonewright.principles.Card.Limit;

/** Worlds made from plain values, without the cells and the line of numbers of the engine. */
final class PlainWorld {

  private PlainWorld() {}

  static Cell word(String word) {
    return new Cell.Text(word);
  }

  static Cell number(double value) {
    return new Cell.Span(value, value, value);
  }

  static Cell none() {
    return new Cell.Nothing();
  }

  /** Return the world of a card with these values, one for each need. */
  static World of(Card card, Map<String, Cell> values) {
    return new World(card.id(), values, limits(card, values));
  }

  /** Return the limits of a card as they hold for these words. */
  static Map<String, Double> limits(Card card, Map<String, Cell> values) {
    return limits(card.limits(), values);
  }

  /** Return some limits as they hold for these words. */
  static Map<String, Double> limits(Map<String, Limit> tables, Map<String, Cell> values) {
    Map<String, Double> limits = new TreeMap<>();
    tables.forEach((name, limit) -> limits.put(name, limit(limit, values)));
    return limits;
  }

  private static double limit(Limit limit, Map<String, Cell> values) {
    String words =
        limit.by().stream().map(need -> values.get(need).word()).collect(Collectors.joining(" "));
    Map<String, Double> table = limit.values();
    if (limit.by().isEmpty() || !table.containsKey(words)) {
      return table.getOrDefault("otherwise", Double.NaN);
    }
    return table.get(words);
  }
}
