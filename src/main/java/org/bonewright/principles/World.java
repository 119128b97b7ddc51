package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One way in which the inputs of one principle may fall for one subject. It is the only fact that a
 * rule sees. Two worlds are the same only if they are the same object.
 */
public final class World {

  private final String principle;
  private final Map<String, Cell> cells;
  private final Map<String, Double> limits;

  /**
   * Make a world.
   *
   * @param principle id of the principle
   * @param cells one cell for each need
   * @param limits every limit of the card, resolved for these words; NaN where the card has none
   */
  World(String principle, Map<String, Cell> cells, Map<String, Double> limits) {
    this.principle = principle;
    this.cells = Map.copyOf(cells);
    this.limits = Map.copyOf(limits);
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

  /** Return the cell of a need. */
  Cell cell(String need) {
    Cell cell = cells.get(need);
    if (cell == null) {
      throw new IllegalArgumentException(principle + " has no need " + need);
    }
    return cell;
  }

  /** Return the cells by need. */
  Map<String, Cell> cells() {
    return cells;
  }

  /** Return the cells of some needs, in that order, to compare worlds by. */
  List<Cell> cells(List<String> needs) {
    return needs.stream().map(this::cell).toList();
  }
}
