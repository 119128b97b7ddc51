package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.bonewright.principles.Card.Limit;

/**
 * Every limit of a principle moved a little, up and down, in each row of its table alone: by one
 * where it counts, else by a share of what it is.
 */
final class LimitMutants {

  private final Card card;
  private final double share;
  private final double fromZero;

  /**
   * Prepare the limits of a card.
   *
   * @param share how far a limit that does not count is moved, as a share of it
   * @param fromZero how far it is moved where it is 0
   */
  LimitMutants(Card card, double share, double fromZero) {
    this.card = card;
    this.share = share;
    this.fromZero = fromZero;
  }

  /**
   * A limit that was moved.
   *
   * @param mutant the principle with it
   * @param limit name of the limit
   * @param row the words of its row
   * @param from where it was
   * @param to where it is
   */
  record Moved(Mutant mutant, String limit, String row, double from, double to) {}

  /** Return all of them. */
  List<Moved> all() {
    List<Moved> all = new ArrayList<>();
    card.limits()
        .forEach(
            (name, limit) ->
                new TreeMap<>(limit.values())
                    .forEach(
                        (row, value) -> {
                          double step = step(limit, value);
                          all.add(moved(name, row, value, value - step));
                          all.add(moved(name, row, value, value + step));
                        }));
    return all;
  }

  private double step(Limit limit, double value) {
    double step = numbers(limit).step();
    return step > 0 ? step : value == 0 ? fromZero : Math.abs(value) * share;
  }

  private Moved moved(String name, String row, double from, double to) {
    Limit limit = card.limits().get(name);
    Map<String, Double> values = new LinkedHashMap<>(limit.values());
    values.put(row, to);
    Map<String, Limit> limits = new LinkedHashMap<>(card.limits());
    limits.put(name, new Limit(limit.of(), limit.by(), values, limit.evidence()));
    Card other = card.with(limits);
    String what = card.id() + " " + name + " " + row + ": " + from + " as " + to;
    return new Moved(new Mutant(what, other, Mutant.none(card).rules()), name, row, from, to);
  }

  private Numbers numbers(Limit limit) {
    String measure = card.needs().getOrDefault(limit.of(), limit.of());
    return (Numbers) AllCells.RULES.definition(measure).domain();
  }

  /**
   * Return the cells of the card in the row of a limit, with its need at both places of the limit
   * and between them.
   */
  Set<Map<String, Cell>> cells(Moved moved) {
    Limit limit = card.limits().get(moved.limit());
    Numbers numbers = numbers(limit);
    List<Double> places = new ArrayList<>(List.of(moved.from(), moved.to()));
    if (numbers.step() == 0) {
      places.add((moved.from() + moved.to()) / 2);
    }
    places.removeIf(place -> place < numbers.min() || place > numbers.max());
    Set<Map<String, Cell>> cells = new LinkedHashSet<>();
    for (World world : AllCells.of(card)) {
      if (row(limit, world).equals(moved.row())) {
        for (double place : places) {
          Map<String, Cell> other = new TreeMap<>(world.cells());
          other.put(limit.of(), PlainWorld.number(place));
          cells.add(other);
        }
      }
    }
    return cells;
  }

  private static String row(Limit limit, World world) {
    String words = limit.by().stream().map(world::choice).collect(Collectors.joining(" "));
    return !limit.by().isEmpty() && limit.values().containsKey(words) ? words : Limit.OTHERWISE;
  }
}
