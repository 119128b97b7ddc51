package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.bonewright.measures.Definition.Domain.Numbers;

/**
 * The numbers that a need can have, cut at every limit that the card ties to it: a cell at each cut
 * and one in every open interval that holds a possible value.
 */
final class NumberLine {

  private final Numbers domain;
  private final List<Double> cuts;

  NumberLine(Numbers domain, Collection<Double> limits) {
    this.domain = domain;
    TreeSet<Double> sorted = new TreeSet<>();
    limits.stream()
        .filter(limit -> !limit.isNaN() && limit >= domain.min() && limit <= domain.max())
        .forEach(sorted::add);
    this.cuts = List.copyOf(sorted);
  }

  /** Return every cell. */
  List<Cell> all() {
    return touched(domain.min(), domain.max());
  }

  /** Return the cells that hold a possible value between the bounds, in order. */
  List<Cell> touched(double min, double max) {
    List<Cell> cells = new ArrayList<>();
    double low = Math.nextDown(domain.min());
    for (double cut : cuts) {
      addBetween(cells, low, cut, min, max);
      if (min <= cut && cut <= max && possible(cut)) {
        cells.add(new Cell.Span(cut, cut, cut));
      }
      low = cut;
    }
    addBetween(cells, low, Math.nextUp(domain.max()), min, max);
    return cells;
  }

  /** Return the cell that holds a number; nothing where the need cannot be that number. */
  Optional<Cell> at(double value) {
    double finite = Math.max(-Double.MAX_VALUE, Math.min(Double.MAX_VALUE, value));
    return touched(finite, finite).stream().findFirst();
  }

  /**
   * Return the cells between the bounds; for a count that lies between two whole steps, as only a
   * slip of the pen makes it, those of the steps either side.
   */
  List<Cell> near(double min, double max) {
    List<Cell> cells = touched(min, max);
    return cells.isEmpty() && domain.step() > 0
        ? touched(
            Math.floor(min / domain.step()) * domain.step(),
            Math.ceil(max / domain.step()) * domain.step())
        : cells;
  }

  private void addBetween(List<Cell> cells, double low, double high, double min, double max) {
    double from = Math.max(Math.nextUp(low), min);
    double to = Math.min(Math.nextDown(high), max);
    if (from > to || !holdsPossible(from, to)) {
      return;
    }
    double shownLow = cuts.contains(low) ? low : domain.min();
    double shownHigh = cuts.contains(high) ? high : domain.max();
    double chosen = representative(low, high);
    boolean single = domain.step() > 0 && !possibleBeside(chosen, low, high);
    cells.add(
        single
            ? new Cell.Span(chosen, chosen, chosen)
            : new Cell.Span(shownLow, shownHigh, chosen));
  }

  private boolean possibleBeside(double chosen, double low, double high) {
    double less = chosen - domain.step();
    double more = chosen + domain.step();
    return (less > low && less >= domain.min()) || (more < high && more <= domain.max());
  }

  private boolean possible(double value) {
    return domain.step() == 0 || Math.rint(value / domain.step()) * domain.step() == value;
  }

  private boolean holdsPossible(double from, double to) {
    if (domain.step() == 0 || Double.isInfinite(to)) {
      return true;
    }
    return Math.ceil(from / domain.step()) * domain.step() <= to;
  }

  private double representative(double low, double high) {
    boolean noFloor = Double.isInfinite(low) || low <= -Double.MAX_VALUE;
    boolean noTop = Double.isInfinite(high) || high >= Double.MAX_VALUE;
    double middle =
        noFloor && noTop ? 0 : noFloor ? high - 1 : noTop ? low + 1 : low + (high - low) / 2;
    if (domain.step() == 0) {
      return middle;
    }
    double below = Math.floor(middle / domain.step()) * domain.step();
    return below > low ? below : below + domain.step();
  }
}
