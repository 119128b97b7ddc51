package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
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
  }

  /** Return the verdict. */
  Verdict verdict() {
    Set<VerdictKind> kinds = kinds(worlds);
    if (kinds.size() > 1) {
      List<String> relevant = relevantNeeds();
      return new Verdict.Unknown(kinds, worst().severity(), asks(relevant), settles(relevant));
    }
    return switch (kinds.iterator().next()) {
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

  private Set<VerdictKind> kinds(Collection<World> some) {
    return some.stream()
        .map(world -> of(world).kind())
        .collect(Collectors.toCollection(TreeSet::new));
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
    Map<List<Cell>, VerdictKind> byCells = new LinkedHashMap<>();
    for (World world : worlds) {
      VerdictKind kind = of(world).kind();
      VerdictKind before = byCells.putIfAbsent(world.cells(some), kind);
      if (before != null && before != kind) {
        return false;
      }
    }
    return byCells.entrySet().stream()
        .collect(Collectors.groupingBy(e -> e.getKey().stream().map(Cell::word).toList()))
        .values()
        .stream()
        .allMatch(CardVerdict::agreeWhereTheyMeet);
  }

  private static boolean agreeWhereTheyMeet(List<Map.Entry<List<Cell>, VerdictKind>> sameWords) {
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
