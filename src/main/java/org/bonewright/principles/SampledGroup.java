package org.bonewright.principles;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * The worlds that agree in every need but those that a model samples. Each sample falls into one of
 * them. At least nine samples in ten with one kind of verdict decide; a severity that fewer than
 * one in ten reaches is no severity of the group.
 */
final class SampledGroup {

  private final Map<World, Integer> counts;
  private final Verdicts verdicts;
  private final int samples;

  /**
   * Make a group.
   *
   * @param counts how many samples fall into each world; one at least
   * @param verdicts what the rules say of these worlds
   */
  SampledGroup(Map<World, Integer> counts, Verdicts verdicts) {
    this.counts = new LinkedHashMap<>(counts);
    this.verdicts = verdicts;
    this.samples = count(world -> true);
  }

  /** Return how many samples give each kind of verdict. */
  Map<VerdictKind, Integer> kinds() {
    Map<VerdictKind, Integer> kinds = new EnumMap<>(VerdictKind.class);
    counts.forEach((world, n) -> kinds.merge(verdicts.of(world).kind(), n, Integer::sum));
    return kinds;
  }

  /** Return the kind of verdict that at least nine samples in ten give, if there is such. */
  Optional<VerdictKind> agreed() {
    return kinds().entrySet().stream()
        .filter(kind -> nineInTen(kind.getValue()))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * Return the worlds that stand for the group: those of the kind that is agreed, else all; without
   * the unmet ones that are graver than what one sample in ten reaches, or milder than what nine in
   * ten reach.
   */
  List<World> kept() {
    Optional<VerdictKind> agreed = agreed();
    Severity mildest = severity(this::nineInTen);
    Severity gravest = severity(this::oneInTen);
    return counts.keySet().stream()
        .filter(world -> agreed.isEmpty() || verdicts.of(world).kind() == agreed.get())
        .filter(world -> !isUnmet(world) || isBetween(world, mildest, gravest))
        .toList();
  }

  private boolean isUnmet(World world) {
    return verdicts.of(world).kind() == VerdictKind.UNMET;
  }

  private boolean isBetween(World world, Severity mildest, Severity gravest) {
    Severity severity = verdicts.of(world).severity();
    return severity.compareTo(mildest) >= 0 && severity.compareTo(gravest) <= 0;
  }

  /** The gravest severity that enough samples reach; the mildest there is, if too few do. */
  private Severity severity(IntPredicate enough) {
    List<Severity> there =
        counts.keySet().stream()
            .filter(this::isUnmet)
            .map(world -> verdicts.of(world).severity())
            .distinct()
            .sorted()
            .toList();
    Severity gravest = there.isEmpty() ? Severity.NOTE : there.get(0);
    for (Severity severity : there) {
      if (enough.test(count(world -> isUnmetAtLeast(world, severity)))) {
        gravest = severity;
      }
    }
    return gravest;
  }

  private boolean isUnmetAtLeast(World world, Severity severity) {
    return isUnmet(world) && verdicts.of(world).severity().compareTo(severity) >= 0;
  }

  /**
   * Return the limits that at least nine samples in ten do not keep, each with the highest grade
   * that it has in a world that is kept.
   */
  Map<String, Severity> faults() {
    Map<String, Severity> faults = new TreeMap<>();
    for (World world : kept()) {
      verdicts
          .faults(world)
          .forEach((limit, grade) -> faults.merge(limit, grade, SampledGroup::graver));
    }
    List<String> certain = new ArrayList<>();
    for (String limit : faults.keySet()) {
      if (nineInTen(count(world -> verdicts.faults(world).containsKey(limit)))) {
        certain.add(limit);
      }
    }
    faults.keySet().retainAll(certain);
    return faults;
  }

  private static Severity graver(Severity one, Severity other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** Return how many samples fall into a world. */
  int count(World world) {
    return counts.getOrDefault(world, 0);
  }

  private int count(Predicate<World> which) {
    return counts.entrySet().stream()
        .filter(entry -> which.test(entry.getKey()))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  private boolean nineInTen(int count) {
    return count * 10 >= samples * 9;
  }

  private boolean oneInTen(int count) {
    return count * 10 >= samples;
  }
}
