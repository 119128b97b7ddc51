package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.bonewright.measures.Definition.Domain.Words;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;

/**
 * Draws readings of a card's needs at random, and values inside them. It knows domains and limits,
 * but nothing of cells; values near limits are drawn more often than others.
 */
final class Draws {

  private static final double NEAR_A_LIMIT = 0.6;

  private final Random random;
  private final Map<String, Domain> domains = new TreeMap<>();
  private final Map<String, List<Double>> nearLimits = new TreeMap<>();

  Draws(RuleSet rules, Card card, long seed) {
    this.random = new Random(seed);
    card.needs()
        .forEach(
            (need, measure) -> {
              Domain domain = rules.definition(measure).domain();
              domains.put(need, domain);
              if (domain instanceof Numbers numbers) {
                nearLimits.put(need, nearLimits(card, need, numbers));
              }
            });
  }

  private static List<Double> nearLimits(Card card, String need, Numbers domain) {
    TreeSet<Double> near = new TreeSet<>();
    double step = domain.step() == 0 ? 0.25 : domain.step();
    card.limits().values().stream()
        .filter(limit -> limit.of().equals(need))
        .flatMap(limit -> limit.values().values().stream())
        .forEach(
            at ->
                near.addAll(List.of(at, Math.nextUp(at), Math.nextDown(at), at - step, at + step)));
    near.addAll(List.of(domain.min(), domain.max()));
    return near.stream().filter(value -> allows(domain, value)).toList();
  }

  /** Return whether a need with this domain can have this value. */
  static boolean allows(Numbers domain, double value) {
    boolean onStep = domain.step() == 0 || Math.abs(value % domain.step()) == 0;
    return Double.isFinite(value) && value >= domain.min() && value <= domain.max() && onStep;
  }

  /** Return the values that a need can have. */
  Domain domain(String need) {
    return domains.get(need);
  }

  /** Return one of several things. */
  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Return readings of every need, more or less of them unknown. */
  Map<String, Reading> readings() {
    double ignorance = one(List.of(0.15, 0.3, 0.3, 0.5, 0.8));
    Map<String, Reading> readings = new TreeMap<>();
    domains.forEach((need, domain) -> readings.put(need, reading(need, domain, ignorance)));
    return readings;
  }

  private Reading reading(String need, Domain domain, double ignorance) {
    if (random.nextDouble() < ignorance) {
      MissingFact fact = new MissingFact(random.nextInt(5) == 0 ? "one field" : need, "?");
      return random.nextBoolean() ? Reading.unknown(fact) : part(need, domain, fact);
    }
    if (domain instanceof Numbers && random.nextInt(20) == 0) {
      return new Reading.None("there is none");
    }
    Cell known = inside(need, Reading.unknown()).get();
    return domain instanceof Words
        ? Reading.word(known.word(), "")
        : Reading.number(known.number(), "");
  }

  private Reading part(String need, Domain domain, MissingFact fact) {
    if (domain instanceof Words words) {
      TreeSet<String> some = new TreeSet<>(words.words());
      while (some.size() > 1 && random.nextBoolean()) {
        some.remove(one(List.copyOf(some)));
      }
      return Reading.words(some, Kind.FACT, "", fact);
    }
    Supplier<Cell> any = inside(need, Reading.unknown());
    double one = any.get().number();
    double other = any.get().number();
    double min = Math.min(one, other);
    double max = random.nextInt(8) == 0 ? ((Numbers) domain).max() : Math.max(one, other);
    List<MissingFact> missing = min == max ? List.of() : List.of(fact);
    return new Reading.Amount(min, max, Kind.FACT, "", missing);
  }

  /** Return where values of every need are drawn from, inside these readings. */
  Map<String, Supplier<Cell>> inside(Map<String, Reading> readings) {
    Map<String, Supplier<Cell>> inside = new TreeMap<>();
    readings.forEach((need, reading) -> inside.put(need, inside(need, reading)));
    return inside;
  }

  /** Return where values of one need are drawn from, inside its reading. */
  Supplier<Cell> inside(String need, Reading reading) {
    if (reading instanceof Reading.None) {
      return PlainWorld::none;
    }
    if (domains.get(need) instanceof Words words) {
      List<String> possible =
          reading instanceof Reading.Word word ? List.copyOf(word.possible()) : words.words();
      return () -> PlainWorld.word(one(possible));
    }
    Numbers domain = (Numbers) domains.get(need);
    return reading instanceof Reading.Amount amount
        ? numbers(need, domain, amount.min(), amount.max())
        : numbers(need, domain, domain.min(), domain.max());
  }

  private Supplier<Cell> numbers(String need, Numbers domain, double min, double max) {
    List<Double> all = nearLimits.get(need);
    List<Double> near = all.stream().filter(value -> min <= value && value <= max).toList();
    double highest = all.isEmpty() ? 0 : all.get(all.size() - 1);
    double lowest = all.isEmpty() ? 0 : all.get(0);
    double high = Math.min(max, Math.max(min, highest) + 5);
    double low = Math.max(min, Math.min(high, lowest) - 5);
    return () ->
        PlainWorld.number(
            !near.isEmpty() && random.nextDouble() < NEAR_A_LIMIT
                ? one(near)
                : onStep(low + random.nextDouble() * (high - low), domain, min, max));
  }

  private static double onStep(double value, Numbers domain, double min, double max) {
    double step = domain.step();
    double rounded = step == 0 ? value : Math.rint(value / step) * step;
    return rounded > max ? rounded - step : rounded < min ? rounded + step : rounded;
  }

  /** Return the same readings with one of them known better, all others as they are. */
  Map<String, Reading> narrowed(Map<String, Reading> readings) {
    Map<String, Reading> narrowed = new TreeMap<>(readings);
    String need = one(List.copyOf(readings.keySet()));
    Supplier<Cell> inside = inside(need, readings.get(need));
    Cell one = inside.get();
    Cell other = inside.get();
    if (one instanceof Cell.Text) {
      narrowed.put(
          need, Reading.words(new TreeSet<>(List.of(one.word(), other.word())), Kind.FACT, ""));
    } else if (one instanceof Cell.Span) {
      double min = Math.min(one.number(), other.number());
      double max = Math.max(one.number(), other.number());
      narrowed.put(need, new Reading.Amount(min, max, Kind.FACT, "", List.of()));
    }
    return narrowed;
  }

  /** Return these readings in words, for messages. */
  static String shown(Map<String, Reading> readings) {
    List<String> parts = new ArrayList<>();
    readings.forEach((need, reading) -> parts.add(need + "=" + reading.shown()));
    return String.join(", ", parts);
  }
}
