package org.bonewright.principles;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.bonewright.principles.CellBoxes.Box;
import org.bonewright.principles.RuleChanges.Turned;

/**
 * Every cell in which a principle judges otherwise than it did. The cells are those of both
 * versions: every measure that either reads, cut at the limits of both. A word that only one of
 * them knows is left out, and so is a cell whose words are never read together.
 */
final class CellChanges {

  /** More cells than any principle has; beyond that nothing is compared, and it is said. */
  private static final int MOST = 4_000_000;

  /** Rows that a reader takes in; the rest is counted. */
  private static final int ROWS = 12;

  private final String id;
  private final ReleasedPrinciple before;
  private final ReleasedPrinciple after;
  private final Function<String, Optional<Definition>> measures;
  private final ReadTogether together;
  private final Map<String, List<Cell>> axes = new LinkedHashMap<>();

  CellChanges(
      String id,
      ReleasedPrinciple before,
      ReleasedPrinciple after,
      Function<String, Optional<Definition>> measures,
      ReadTogether together) {
    this.id = id;
    this.before = before;
    this.after = after;
    this.measures = measures;
    this.together = together;
    TreeSet<String> all = new TreeSet<>(before.needs().values());
    all.addAll(after.needs().values());
    all.forEach(measure -> axes.put(measure, axis(measure)));
    axes.values().removeIf(List::isEmpty);
  }

  private List<Cell> axis(String measure) {
    Optional<List<String>> then = words(before, measure);
    Optional<List<String>> now = words(after, measure);
    if (then.isPresent() || now.isPresent()) {
      List<String> words = new ArrayList<>(now.or(() -> then).orElseThrow());
      then.ifPresent(words::retainAll);
      return words.stream().map(PlainWorld::word).toList();
    }
    List<Double> cuts = new ArrayList<>();
    for (ReleasedPrinciple principle : List.of(before, after)) {
      principle.limits().values().stream()
          .filter(limit -> measure.equals(principle.needs().get(limit.of())))
          .forEach(limit -> cuts.addAll(limit.values().values()));
    }
    Numbers any = new Numbers("1", "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0);
    return new NumberLine(
            measures.apply(measure).map(Definition::domain).map(Numbers.class::cast).orElse(any),
            cuts)
        .all();
  }

  private static Optional<List<String>> words(ReleasedPrinciple principle, String measure) {
    return principle.needs().entrySet().stream()
        .filter(need -> need.getValue().equals(measure))
        .map(need -> principle.words().get(need.getKey()))
        .filter(words -> words != null)
        .findFirst();
  }

  /**
   * What changed.
   *
   * @param given the readings that all rows share
   * @param rows the verdicts that are other ones, those with the most cells first
   */
  record Told(List<String> given, List<Turned> rows) {}

  /** Return what changed; no rows where nothing did. */
  Told told() {
    List<String> names = List.copyOf(axes.keySet());
    int[] sizes = axes.values().stream().mapToInt(List::size).toArray();
    long cells = axes.values().stream().mapToLong(List::size).reduce(1, (a, b) -> a * b);
    if (cells > MOST) {
      return new Told(
          List.of(), List.of(new Turned("too many readings to compare one by one", "?", "?")));
    }
    CellBoxes table = new CellBoxes(sizes);
    Map<List<String>, BitSet> turned = new TreeMap<>(Comparator.comparing(String::valueOf));
    PlainRules then = PlainRules.of(before.rules());
    PlainRules now = PlainRules.of(after.rules());
    for (int cell = 0; cell < cells; cell++) {
      int[] values = table.values(cell);
      String was = said(then, world(before, names, values));
      String is = said(now, world(after, names, values));
      if (!was.equals(is) && together.possible(words(names, values))) {
        turned.computeIfAbsent(List.of(was, is), t -> new BitSet()).set(cell);
      }
    }
    return told(table, names, turned);
  }

  /**
   * A row to be.
   *
   * @param size how many cells it has
   * @param where the readings, measure by measure
   * @param change the verdicts before and after
   */
  private record Row(long size, List<String> where, List<String> change) {}

  private Told told(CellBoxes table, List<String> names, Map<List<String>, BitSet> turned) {
    List<Row> rows = new ArrayList<>();
    turned.forEach(
        (change, cells) ->
            table
                .of(cells)
                .forEach(box -> rows.add(new Row(box.size(), where(names, box), change))));
    rows.sort(Comparator.comparing(Row::size).reversed());
    List<String> given = new ArrayList<>(rows.isEmpty() ? List.of() : rows.get(0).where());
    rows.forEach(row -> given.retainAll(row.where()));
    List<Turned> told = new ArrayList<>();
    for (Row row : rows.subList(0, Math.min(ROWS, rows.size()))) {
      List<String> rest = new ArrayList<>(row.where());
      rest.removeAll(given);
      String where = rest.isEmpty() ? "whatever else is read" : String.join("; ", rest);
      told.add(new Turned(where, row.change().get(0), row.change().get(1)));
    }
    if (rows.size() > ROWS) {
      told.add(
          new Turned(
              "in " + (rows.size() - ROWS) + " more groups of readings", "various", "various"));
    }
    return new Told(given, told);
  }

  private Map<String, String> words(List<String> names, int[] values) {
    Map<String, String> words = new TreeMap<>();
    for (int axis = 0; axis < values.length; axis++) {
      Cell cell = axes.get(names.get(axis)).get(values[axis]);
      if (!(cell instanceof Cell.Span)) {
        words.put(names.get(axis), cell.word());
      }
    }
    return words;
  }

  private World world(ReleasedPrinciple principle, List<String> names, int[] values) {
    Map<String, Cell> cells = new TreeMap<>();
    principle
        .needs()
        .forEach(
            (need, measure) -> {
              int axis = names.indexOf(measure);
              cells.put(need, axes.get(measure).get(values[axis]));
            });
    return new World(id, cells, PlainWorld.limits(principle.limits(), cells));
  }

  private static String said(PlainRules rules, World world) {
    WorldVerdict verdict = rules.judge(world);
    return verdict.kind() == VerdictKind.UNMET
        ? "unmet (" + verdict.severity().word() + ")"
        : verdict.kind().word().replace('-', ' ');
  }

  private List<String> where(List<String> names, Box box) {
    List<String> parts = new ArrayList<>();
    for (int axis = 0; axis < names.size(); axis++) {
      List<Cell> cells = axes.get(names.get(axis));
      if (box.allowed().get(axis).cardinality() < cells.size()) {
        parts.add(new CellWords(measures, names.get(axis)).of(cells, box.allowed().get(axis)));
      }
    }
    return parts;
  }
}
