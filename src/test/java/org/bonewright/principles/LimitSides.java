package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Examples.Line;

/**
 * Tells which limits of a card its lines leave without proof. A limit is proved where three lines
 * differ in its number alone, one below it, one on it and one above it, and the verdict turns among
 * them; where it differs by words, in each row of its table.
 */
final class LimitSides {

  private static final String OTHERWISE = "otherwise";

  private final Card card;
  private final List<Line> lines;

  LimitSides(Card card, List<Line> lines) {
    this.card = card;
    this.lines = lines;
  }

  /** Return the limits, with the words of their row, that lack a line below, on or above. */
  List<String> unproved() {
    List<String> unproved = new ArrayList<>();
    card.limits()
        .forEach(
            (name, limit) ->
                new TreeSet<>(limit.values().keySet())
                    .stream()
                        .filter(row -> !proved(limit, row))
                        .forEach(
                            row -> unproved.add(limit.by().isEmpty() ? name : name + " " + row)));
    return unproved;
  }

  private boolean proved(Card.Limit limit, String row) {
    double at = limit.values().getOrDefault(row, Double.NaN);
    return lines.stream()
        .filter(line -> row(limit, line).equals(row))
        .collect(Collectors.groupingBy(line -> others(line, limit.of())))
        .values()
        .stream()
        .anyMatch(alike -> turns(alike, limit.of(), at, least(limit)));
  }

  private static String row(Card.Limit limit, Line line) {
    String words = limit.by().stream().map(line::word).collect(Collectors.joining(" "));
    return limit.values().containsKey(words) ? words : OTHERWISE;
  }

  private static Map<String, Reading> others(Line line, String need) {
    Map<String, Reading> others = new TreeMap<>(line.readings());
    others.remove(need);
    return others;
  }

  /** Nothing lies below the least value that a measure can have. */
  private double least(Card.Limit limit) {
    Definition.Domain domain =
        RuleSet.built().definition(card.needs().getOrDefault(limit.of(), limit.of())).domain();
    return domain instanceof Definition.Domain.Numbers numbers
        ? numbers.min()
        : Double.NEGATIVE_INFINITY;
  }

  private static boolean turns(Collection<Line> alike, String need, double at, double least) {
    TreeMap<Double, String> scale = new TreeMap<>();
    alike.stream()
        .filter(line -> !Double.isNaN(line.number(need)))
        .forEach(line -> scale.put(line.number(need), line.expect()));
    Optional<String> below = Optional.ofNullable(scale.lowerEntry(at)).map(Map.Entry::getValue);
    Optional<String> above = Optional.ofNullable(scale.higherEntry(at)).map(Map.Entry::getValue);
    Optional<String> on = Optional.ofNullable(scale.get(at));
    if (at <= least) {
      return on.isPresent() && above.isPresent() && !above.equals(on);
    }
    return below.isPresent()
        && on.isPresent()
        && above.isPresent()
        && !(below.equals(on) && above.equals(on));
  }
}
