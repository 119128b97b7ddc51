package org.bonewright.principles;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One way in which the inputs of one principle may fall for one subject. It is the only fact that a
 * rule sees. Two worlds are the same only if they are the same object.
 */
public final class World {

  private final String principle;
  private final Places places;
  private final Cell[] cells;
  private final Map<String, Double> limits;

  /**
   * Make a world.
   *
   * @param principle id of the principle
   * @param cells one cell for each need
   * @param limits every limit of the card, resolved for these words; NaN where the card has none
   */
  World(String principle, Map<String, Cell> cells, Map<String, Double> limits) {
    this(
        principle,
        new Places(List.copyOf(cells.keySet())),
        cells.values().toArray(new Cell[0]),
        Map.copyOf(limits));
  }

  /**
   * Make one of many worlds of a card, which share what is the same in all of them.
   *
   * @param places the place of each need among the cells
   * @param cells one cell for each need; is kept, not copied
   * @param limits every limit, resolved; is kept, not copied
   */
  World(String principle, Places places, Cell[] cells, Map<String, Double> limits) {
    this.principle = principle;
    this.places = places;
    this.cells = cells;
    this.limits = limits;
  }

  /** The order of the needs of a card. */
  static final class Places {

    private final List<String> needs;
    private final Map<String, Integer> byNeed = new HashMap<>();

    Places(List<String> needs) {
      this.needs = needs;
      for (int i = 0; i < needs.size(); i++) {
        byNeed.put(needs.get(i), i);
      }
    }

    /** Return how many needs there are. */
    int size() {
      return needs.size();
    }

    /** Return the place of a need, -1 where the card has no such need. */
    int of(String need) {
      return byNeed.getOrDefault(need, -1);
    }
  }

  /** Return the id of the principle to be judged. */
  public String principle() {
    return principle;
  }

  /**
   * Return the word of a need; {@code none} where there is no such thing.
   *
   * @throws IllegalArgumentException if the card has no such need
   */
  public String choice(String need) {
    return cell(need).word();
  }

  /**
   * Return the number of a need; null where there is none. In a rule null compares false with
   * everything by {@code <}, {@code <=}, {@code >} and {@code >=}; NaN would not.
   *
   * @throws IllegalArgumentException if the card has no such need
   */
  public @Nullable Double value(String need) {
    return boxed(cell(need).number());
  }

  /**
   * Return a limit; null where the card has none for these words.
   *
   * @throws IllegalArgumentException if the card has no such limit
   */
  public @Nullable Double limit(String limit) {
    Double value = limits.get(limit);
    if (value == null) {
      throw new IllegalArgumentException(principle + " has no limit " + limit);
    }
    return boxed(value);
  }

  private static @Nullable Double boxed(double number) {
    return Double.isNaN(number)
        ? null
        : number + 0.0; // no negative zero: rules would take it as < 0
  }

  /** Return every limit as it holds here; NaN where the card has none. */
  Map<String, Double> limits() {
    return limits;
  }

  /** Return the cell of a need. */
  Cell cell(String need) {
    int place = places.of(need);
    if (place < 0) {
      throw new IllegalArgumentException(principle + " has no need " + need);
    }
    return cells[place];
  }

  /** Return the cells by need. */
  Map<String, Cell> cells() {
    Map<String, Cell> byNeed = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      byNeed.put(places.needs.get(i), cells[i]);
    }
    return byNeed;
  }

  /** Return the cells of some needs, in that order, to compare worlds by. */
  List<Cell> cells(List<String> some) {
    return Arrays.asList(some.stream().map(this::cell).toArray(Cell[]::new));
  }
}
