package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;

/**
 * Joins what the rules say of the worlds of one card and subject to one verdict: all agree, or it
 * is unknown, with what would settle it.
 */
final class CardVerdict {

  private final Card card;
  private final List<String> needs;
  private final List<World> worlds;
  private final Verdicts verdicts;
  private final Map<World, WorldVerdict> said;
  private final List<VerdictKind> kinds;
  private final Map<String, Digits> numbered = new HashMap<>();
  private final Map<String, Reading> readings;

  /**
   * Prepare the joining.
   *
   * @param former what formed the worlds
   * @param worlds the worlds that the readings leave
   * @param verdicts what the rules say
   * @param readings the readings by need
   */
  CardVerdict(Worlds former, List<World> worlds, Verdicts verdicts, Map<String, Reading> readings) {
    this.card = former.card();
    this.needs = former.needs();
    this.worlds = worlds;
    this.verdicts = verdicts;
    this.readings = readings;
    this.said = new HashMap<>();
    worlds.forEach(world -> said.put(world, verdicts.of(world)));
    this.kinds = worlds.stream().map(world -> of(world).kind()).toList();
  }

  /** Return the verdict. */
  Verdict verdict() {
    Set<VerdictKind> possible = new TreeSet<>(kinds);
    if (possible.size() > 1) {
      List<String> relevant = relevantNeeds();
      return new Verdict.Unknown(possible, worst().severity(), asks(relevant), settles(relevant));
    }
    return switch (possible.iterator().next()) {
      case MET -> new Verdict.Met();
      case NOT_APPLICABLE -> new Verdict.NotApplicable();
      case UNMET -> unmet();
      case UNKNOWN -> throw new IllegalStateException("a world is never unknown");
    };
  }

  private Verdict unmet() {
    Severity severity = worst().severity();
    Map<String, Severity> certain = new CertainFaults(card, verdicts, worlds).byLimit();
    String limit =
        certain.entrySet().stream()
            .filter(fault -> fault.getValue() == severity)
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse(worst().limit());
    return new Verdict.Unmet(severity, mildest(), limit, List.copyOf(certain.keySet()));
  }

  private WorldVerdict of(World world) {
    return said.getOrDefault(world, WorldVerdict.NOT_APPLICABLE);
  }

  private WorldVerdict worst() {
    return worlds.stream()
        .map(this::of)
        .filter(v -> v.kind() == VerdictKind.UNMET)
        .max(Comparator.comparing(WorldVerdict::severity).thenComparing(WorldVerdict::limit))
        .orElse(WorldVerdict.MET);
  }

  private Severity mildest() {
    return worlds.stream()
        .map(world -> of(world).severity())
        .min(Comparator.naturalOrder())
        .orElse(Severity.NOTE);
  }

  /** A need matters if two ways that differ in it alone get different verdicts. */
  private List<String> relevantNeeds() {
    List<String> relevant = new ArrayList<>();
    for (String need : needs) {
      if (!decide(needs.stream().filter(other -> !other.equals(need)).toList())) {
        relevant.add(need);
      }
    }
    return relevant.isEmpty() ? needs : relevant;
  }

  /**
   * Return whether the verdict hangs on these needs alone. Where limits differ by words, so do the
   * cells of a number: two worlds may share a value of it without sharing a cell.
   */
  private boolean decide(List<String> some) {
    Map<Long, VerdictKind> byCells = new HashMap<>();
    List<Digits> digits = some.stream().map(this::digits).toList();
    for (int i = 0; i < worlds.size(); i++) {
      long key = 0;
      for (Digits need : digits) {
        key = need.after(key, i);
      }
      VerdictKind kind = kinds.get(i);
      VerdictKind before = byCells.putIfAbsent(key, kind);
      if (before != null && before != kind) {
        return false;
      }
    }
    return !cutsDifferWithout(some) || agreeWhereTheyMeet(some);
  }

  /** The cells of a need, numbered, so that worlds can be compared by one number. */
  private static final class Digits {

    private final int[] ofWorld;
    private final int count;

    Digits(String need, List<World> worlds) {
      Map<Cell, Integer> numbers = new HashMap<>();
      ofWorld = new int[worlds.size()];
      for (int i = 0; i < ofWorld.length; i++) {
        Integer number = numbers.putIfAbsent(worlds.get(i).cell(need), numbers.size());
        ofWorld[i] = number == null ? numbers.size() - 1 : number;
      }
      count = numbers.size();
    }

    /** Return a number that tells both what it told before and the cell of this need. */
    long after(long key, int world) {
      return key * count + ofWorld[world];
    }
  }

  private Digits digits(String need) {
    return numbered.computeIfAbsent(need, n -> new Digits(n, worlds));
  }

  /** Return whether a word that is left out moves the limits by which numbers are cut. */
  private boolean cutsDifferWithout(List<String> some) {
    return card.limits().values().stream()
        .flatMap(limit -> limit.by().stream())
        .anyMatch(word -> !some.contains(word));
  }

  private boolean agreeWhereTheyMeet(List<String> some) {
    Map<List<Cell>, VerdictKind> byCells = new LinkedHashMap<>();
    for (int i = 0; i < worlds.size(); i++) {
      byCells.put(worlds.get(i).cells(some), kinds.get(i));
    }
    return byCells.entrySet().stream()
        .collect(Collectors.groupingBy(e -> e.getKey().stream().map(Cell::word).toList()))
        .values()
        .stream()
        .allMatch(CardVerdict::sameWordsAgree);
  }

  private static boolean sameWordsAgree(List<Map.Entry<List<Cell>, VerdictKind>> sameWords) {
    for (int i = 0; i < sameWords.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (sameWords.get(i).getValue() != sameWords.get(j).getValue()
            && meet(sameWords.get(i).getKey(), sameWords.get(j).getKey())) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean meet(List<Cell> one, List<Cell> other) {
    for (int i = 0; i < one.size(); i++) {
      if (one.get(i) instanceof Cell.Span span
          && other.get(i) instanceof Cell.Span second
          && !span.meets(second)) {
        return false;
      }
    }
    return true;
  }

  private List<MissingFact> asks(List<String> relevant) {
    Set<MissingFact> asks = new LinkedHashSet<>();
    relevant.forEach(need -> asks.addAll(missing(need)));
    return List.copyOf(asks);
  }

  private List<MissingFact> missing(String need) {
    Reading reading = readings.get(need);
    return reading == null ? List.of() : reading.missing();
  }

  /**
   * A fact settles the verdict if, whatever it turns out to be, all worlds left agree. Only needs
   * that miss nothing but this fact become known by it.
   */
  private List<MissingFact> settles(List<String> relevant) {
    return asks(relevant).stream().filter(fact -> settles(fact)).toList();
  }

  private boolean settles(MissingFact fact) {
    List<String> known =
        needs.stream().filter(need -> missing(need).equals(List.of(fact))).toList();
    return !known.isEmpty() && decide(known);
  }
}
