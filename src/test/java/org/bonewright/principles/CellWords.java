package org.bonewright.principles;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;

/** Some cells of a measure in words: "span ratio at least 4 and below 5". */
final class CellWords {

  private final String title;
  private final String unit;

  /** Prepare the words of a measure; one that is no more is called by its id. */
  CellWords(Function<String, Optional<Definition>> measures, String measure) {
    this.title = title(measures, measure);
    this.unit = measures.apply(measure).map(Definition::shownUnit).orElse("");
  }

  /** Return the title of a measure as it stands within a sentence. */
  static String title(Function<String, Optional<Definition>> measures, String measure) {
    String title = measures.apply(measure).map(Definition::title).orElse(measure.replace('-', ' '));
    return Character.isUpperCase(title.charAt(Math.min(1, title.length() - 1)))
        ? title
        : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  /** Return a number with the unit. */
  String number(double value) {
    String gap = unit.isEmpty() || unit.equals("°") ? "" : " ";
    return Dimension.number(value) + gap + unit;
  }

  /** Return those of the cells of the measure that are allowed. */
  String of(List<Cell> cells, BitSet allowed) {
    List<String> parts = new ArrayList<>();
    if (cells.get(0) instanceof Cell.Text) {
      BitSet others = new BitSet();
      others.set(0, cells.size());
      others.andNot(allowed);
      boolean few = others.cardinality() == 1 && cells.size() > 2;
      (few ? others : allowed)
          .stream().forEach(i -> parts.add(cells.get(i).word().replace('-', ' ')));
      return title + (few ? ": any but " : ": ") + either(parts);
    }
    for (int from = allowed.nextSetBit(0); from >= 0; ) {
      int to = allowed.nextClearBit(from) - 1;
      parts.add(run(cells, from, to));
      from = allowed.nextSetBit(to + 1);
    }
    return title + " " + either(parts);
  }

  private static String either(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " or " + parts.get(last);
  }

  private String run(List<Cell> cells, int from, int to) {
    Cell.Span first = (Cell.Span) cells.get(from);
    Cell.Span last = (Cell.Span) cells.get(to);
    if (from == to && first.low() == first.high()) {
      return number(first.low());
    }
    String low = first.low() == first.high() ? "at least " : "above ";
    String high = last.low() == last.high() ? "at most " : "below ";
    List<String> ends = new ArrayList<>();
    if (from > 0) {
      ends.add(low + number(first.low()));
    }
    if (to < cells.size() - 1) {
      ends.add(high + number(last.high()));
    }
    return String.join(" and ", ends);
  }
}
