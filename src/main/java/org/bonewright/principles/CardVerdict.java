package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
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

  private final List<String> needs;
  private final List<World> worlds;
  private final Map<World, WorldVerdict> said;
  private final Map<String, Reading> readings;

  /**
   * Prepare the joining.
   *
   * @param needs the needs in order
   * @param worlds the worlds that the readings leave
   * @param verdicts what the rules say
   * @param readings the readings by need
   */
  CardVerdict(
      List<String> needs, List<World> worlds, Verdicts verdicts, Map<String, Reading> readings) {
    this.needs = needs;
    this.worlds = worlds;
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
      case UNMET -> new Verdict.Unmet(worst().severity(), mildest(), worst().limit());
      case UNKNOWN -> throw new IllegalStateException("a world is never unknown");
    };
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

  /** A need matters if two worlds that differ in it alone get different verdicts. */
  private List<String> relevantNeeds() {
    List<String> relevant = new ArrayList<>();
    for (String need : needs) {
      List<String> others = needs.stream().filter(other -> !other.equals(need)).toList();
      boolean matters =
          worlds.stream()
              .collect(Collectors.groupingBy(world -> world.cells(others)))
              .values()
              .stream()
              .anyMatch(group -> kinds(group).size() > 1);
      if (matters) {
        relevant.add(need);
      }
    }
    return relevant.isEmpty() ? needs : relevant;
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
    return !known.isEmpty()
        && worlds.stream()
            .collect(Collectors.groupingBy(world -> world.cells(known)))
            .values()
            .stream()
            .allMatch(group -> kinds(group).size() == 1);
  }
}
