package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.bonewright.measures.Reading;

/**
 * Compares the engine's verdicts on partial readings of one principle with those on their random
 * completions, each judged as a world of plain values, and with those on narrower readings.
 */
final class BruteForce {

  private static final int BATCH = 50;
  private static final int MOST_DIFFERENCES = 5;

  private final Card card;
  private final RuleSet rules;
  private final Worlds former;
  private final Draws draws;
  private final List<String> differences = new ArrayList<>();

  BruteForce(RuleSet rules, Card card) {
    this.rules = rules;
    this.card = card;
    this.former = rules.worlds(card);
    this.draws = new Draws(rules, card, card.id().hashCode());
  }

  /** Return where engine and completions differ, the first few of them. */
  List<String> differences(int inputs, int completions) {
    for (int done = 0; done < inputs && differences.size() < MOST_DIFFERENCES; done += BATCH) {
      List<Trial> trials =
          Stream.generate(() -> trial(completions)).limit(Math.min(BATCH, inputs - done)).toList();
      Verdicts said = rules.rules().judge(trials.stream().flatMap(Trial::worlds).toList());
      trials.forEach(trial -> compare(trial, said));
    }
    return differences;
  }

  /** Partial readings, the worlds formed of them, completions, and the same of narrower ones. */
  private record Trial(
      Map<String, Reading> readings,
      List<World> formed,
      List<World> completions,
      Map<String, Reading> narrower,
      List<World> formedNarrower) {

    Stream<World> worlds() {
      return Stream.of(formed, completions, formedNarrower).flatMap(List::stream);
    }
  }

  private Trial trial(int completions) {
    Map<String, Reading> readings = draws.readings();
    Map<String, Supplier<Cell>> inside = draws.inside(readings);
    Set<Map<String, Cell>> drawn = new LinkedHashSet<>();
    for (int i = 0; i < completions; i++) {
      drawn.add(values(inside));
    }
    Map<String, Reading> narrower = draws.narrowed(readings);
    return new Trial(
        readings,
        former.of(readings),
        drawn.stream().map(values -> PlainWorld.of(card, values)).toList(),
        narrower,
        former.of(narrower));
  }

  private static Map<String, Cell> values(Map<String, Supplier<Cell>> inside) {
    Map<String, Cell> values = new TreeMap<>();
    inside.forEach((need, cells) -> values.put(need, cells.get()));
    return values;
  }

  private void compare(Trial trial, Verdicts said) {
    Verdict verdict = verdict(trial.formed(), said, trial.readings());
    Scope scope = Scope.of(verdict);
    for (World completion : trial.completions()) {
      if (!scope.allows(said.of(completion))
          || !said.faults(completion).keySet().containsAll(scope.certain())) {
        differ(trial, verdict, said.of(completion) + " for " + completion.cells());
      }
    }
    Scope narrower = Scope.of(verdict(trial.formedNarrower(), said, trial.narrower()));
    if (!scope.holds(narrower)) {
      differ(trial, verdict, narrower + " once narrowed to " + Draws.shown(trial.narrower()));
    }
    witnesses(trial, verdict, scope, said);
  }

  private Verdict verdict(List<World> worlds, Verdicts said, Map<String, Reading> readings) {
    return new CardVerdict(former, worlds, said, readings).verdict();
  }

  private void differ(Trial trial, Verdict verdict, String found) {
    if (differences.size() < MOST_DIFFERENCES) {
      differences.add(verdict + " for " + Draws.shown(trial.readings()) + ", but " + found);
    }
  }

  /** What a verdict says can be: kinds of verdict; where unmet, severities and certain limits. */
  private record Scope(
      Set<VerdictKind> kinds, Severity mildest, Severity worst, List<String> certain) {

    static Scope of(Verdict verdict) {
      if (verdict instanceof Verdict.Unknown unknown) {
        return new Scope(unknown.possible(), Severity.NOTE, unknown.worst(), List.of());
      }
      Set<VerdictKind> kind = Set.of(verdict.kind());
      return verdict instanceof Verdict.Unmet unmet
          ? new Scope(kind, unmet.mildest(), unmet.severity(), unmet.certain())
          : new Scope(kind, Severity.NOTE, Severity.NOTE, List.of());
    }

    boolean allows(WorldVerdict said) {
      boolean graded =
          said.severity().compareTo(mildest) >= 0 && said.severity().compareTo(worst) <= 0;
      return kinds.contains(said.kind()) && (graded || said.kind() != VerdictKind.UNMET);
    }

    boolean holds(Scope narrower) {
      return kinds.containsAll(narrower.kinds)
          && mildest.compareTo(narrower.mildest) <= 0
          && worst.compareTo(narrower.worst) >= 0;
    }
  }

  /** Whatever the engine holds possible must really occur, else it is a verdict withheld. */
  private void witnesses(Trial trial, Verdict verdict, Scope scope, Verdicts said) {
    List<WorldVerdict> wanted = new ArrayList<>();
    for (VerdictKind kind : scope.kinds()) {
      if (kind != VerdictKind.UNMET) {
        wanted.add(new WorldVerdict(kind, Severity.NOTE, ""));
      } else {
        wanted.add(new WorldVerdict(kind, scope.worst(), ""));
        if (verdict instanceof Verdict.Unmet) {
          wanted.add(new WorldVerdict(kind, scope.mildest(), ""));
        }
      }
    }
    for (WorldVerdict want : wanted) {
      if (trial.completions().stream().noneMatch(w -> alike(said.of(w), want))
          && trial.formed().stream()
              .filter(world -> alike(said.of(world), want))
              .noneMatch(world -> occurs(world, trial.readings(), want))) {
        differ(trial, verdict, "nothing inside is " + want);
      }
    }
  }

  private static boolean alike(WorldVerdict one, WorldVerdict other) {
    return one.kind() == other.kind() && one.severity() == other.severity();
  }

  /** Look for values inside the readings, of which this world could be the cells. */
  private boolean occurs(World world, Map<String, Reading> readings, WorldVerdict want) {
    Map<String, Cell> values = new TreeMap<>();
    for (Map.Entry<String, Reading> need : readings.entrySet()) {
      Cell cell = world.cell(need.getKey());
      if (cell instanceof Cell.Span span) {
        List<Double> some = valuesIn(span, (Numbers) draws.domain(need.getKey()), need.getValue());
        if (some.isEmpty()) {
          return false;
        }
        values.put(need.getKey(), PlainWorld.number(draws.one(some)));
      } else {
        values.put(need.getKey(), cell);
      }
    }
    World plain = PlainWorld.of(card, values);
    return alike(rules.rules().judge(List.of(plain)).of(plain), want);
  }

  private static List<Double> valuesIn(Cell.Span span, Numbers domain, Reading reading) {
    double min = reading instanceof Reading.Amount amount ? amount.min() : domain.min();
    double max = reading instanceof Reading.Amount amount ? amount.max() : domain.max();
    double low = Math.max(min, span.low());
    double high = Math.min(max, span.high());
    double next = domain.step() == 0 ? Math.nextUp(low) : Math.floor(low) + domain.step();
    List<Double> some =
        Stream.of(low, high, Math.nextDown(high), low + (high - low) / 2, next, span.number())
            .filter(value -> min <= value && value <= max && Draws.allows(domain, value))
            .filter(value -> span.low() <= value && value <= span.high())
            .toList();
    List<Double> strictly = some.stream().filter(v -> span.low() < v && v < span.high()).toList();
    return strictly.isEmpty()
        ? some
        : strictly; // an end belongs to the cell at an end of the domain
  }
}
