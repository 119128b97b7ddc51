package org.bonewright.principles;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds the limits that are not kept in any world, so that a verdict can name each of them. */
final class CertainFaults {

  private final Card card;
  private final Verdicts verdicts;
  private final List<World> worlds;

  CertainFaults(Card card, Verdicts verdicts, List<World> worlds) {
    this.card = card;
    this.verdicts = verdicts;
    this.worlds = worlds;
  }

  /**
   * Return these limits with their worst grade, the gravest first. Of several limits of one need
   * the gravest stands for all: a ratio below 6 need not also be called below 8.
   */
  Map<String, Severity> byLimit() {
    Map<String, Map.Entry<String, Severity>> byNeed = new HashMap<>();
    everywhere()
        .entrySet()
        .forEach(
            fault ->
                byNeed.merge(
                    need(fault.getKey()),
                    fault,
                    (a, b) -> b.getValue().compareTo(a.getValue()) >= 0 ? b : a));
    Map<String, Severity> gravestFirst = new LinkedHashMap<>();
    byNeed.values().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, Severity> f) -> f.getValue())
                .thenComparing(Map.Entry::getKey)
                .reversed())
        .forEach(fault -> gravestFirst.put(fault.getKey(), fault.getValue()));
    return gravestFirst;
  }

  private Map<String, Severity> everywhere() {
    Map<String, Severity> shared = new TreeMap<>(verdicts.faults(worlds.get(0)));
    for (World world : worlds) {
      Map<String, Severity> here = verdicts.faults(world);
      shared.keySet().retainAll(here.keySet());
      shared.replaceAll(
          (limit, grade) -> {
            Severity other = here.getOrDefault(limit, grade);
            return other.compareTo(grade) > 0 ? other : grade;
          });
    }
    return shared;
  }

  private String need(String limit) {
    return Optional.ofNullable(card.limits().get(limit)).map(Card.Limit::of).orElse(limit);
  }
}
