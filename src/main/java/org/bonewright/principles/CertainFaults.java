package org.bonewright.principles;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds the limits that are not kept in any possible way, so that a verdict can name each of them.
 */
final class CertainFaults {

  private final Card card;
  private final List<Map<String, Severity>> faults;

  /**
   * Prepare.
   *
   * @param card the card
   * @param faults the limits that are not kept, with their grades, in each way that is possible
   */
  CertainFaults(Card card, List<Map<String, Severity>> faults) {
    this.card = card;
    this.faults = faults;
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
                    need(fault.getKey()), fault, (a, b) -> graver().compare(b, a) >= 0 ? b : a));
    Map<String, Severity> gravestFirst = new LinkedHashMap<>();
    byNeed.values().stream()
        .sorted(graver().reversed())
        .forEach(fault -> gravestFirst.put(fault.getKey(), fault.getValue()));
    return gravestFirst;
  }

  /** By grade; of equal grades a limit that nobody disputes counts for more. */
  private Comparator<Map.Entry<String, Severity>> graver() {
    List<String> disputed = card.disputed().map(Card.Dispute::limits).orElse(List.of());
    return Comparator.comparing((Map.Entry<String, Severity> f) -> f.getValue())
        .thenComparing(f -> !disputed.contains(f.getKey()))
        .thenComparing(Map.Entry::getKey);
  }

  private Map<String, Severity> everywhere() {
    Map<String, Severity> shared = new TreeMap<>(faults.get(0));
    for (Map<String, Severity> here : faults) {
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
