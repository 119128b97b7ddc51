package org.bonewright.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.principles.Card;
import org.bonewright.principles.LocalLimit;
import org.bonewright.principles.LocalLoads;
import org.bonewright.principles.LocalSeverity;
import org.bonewright.principles.RuleSet;

/**
 * Holds every change of a site file against the cards, one by one and then card by card; and its
 * loads, bone by bone, and its shelf, size by size.
 */
final class SiteCheck {

  private final RuleSet rules;
  private final PrincipleCheck principles;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<ReadPart, LocalLimit> limits = new LinkedHashMap<>();
  private final Map<ReadPart, LocalSeverity> severities = new LinkedHashMap<>();
  private final ShelfCheck shelf = new ShelfCheck();
  private final List<LocalLoads> loads = new ArrayList<>();
  private final Map<String, String> taken = new LinkedHashMap<>();
  private final Set<String> faulty = new TreeSet<>();

  /**
   * Check.
   *
   * @param rules the published rule set
   * @param parts every record of the file that is whole
   */
  SiteCheck(RuleSet rules, List<ReadPart> parts) {
    this.rules = rules;
    this.principles = new PrincipleCheck(rules);
    parts.forEach(this::take);
    parts.forEach(shelf::take);
    problems.addAll(shelf.problems());
    problems.addAll(principles.problems());
    rules.cards().stream()
        .filter(card -> !faulty.contains(card.id()))
        .forEach(
            card ->
                problems.addAll(
                    new CardCheck(rules, card, of(limits, card), ofSeverities(card)).problems()));
  }

  /** Return every problem. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Return the local limits that stood the check. */
  List<LocalLimit> limits() {
    return List.copyOf(limits.values());
  }

  /** Return the local severities that stood the check. */
  List<LocalSeverity> severities() {
    return List.copyOf(severities.values());
  }

  /** Return the local loads that stood the check. */
  List<LocalLoads> loads() {
    return List.copyOf(loads);
  }

  private void take(ReadPart part) {
    if (part.value() instanceof LimitChange change) {
      boolean first = first(part, "limit", limitKey(change), "limit for these words");
      Optional<Card> card = principles.card(part, change);
      card.ifPresent(
          c -> {
            LimitCheck check = new LimitCheck(rules, c, part, change);
            keep(c, check.limit().filter(limit -> first), part, limits);
            problems.addAll(check.problems());
          });
    } else if (part.value() instanceof SeverityChange change) {
      String key = change.principle() + " from " + change.from().word();
      boolean first = first(part, "from", key, "severity");
      principles
          .card(part, change)
          .ifPresent(
              card -> {
                SeverityCheck check = new SeverityCheck(card, part, change);
                keep(card, check.severity().filter(s -> first), part, severities);
                problems.addAll(check.problems());
              });
    } else if (part.value() instanceof LoadChange change) {
      boolean first = first(part, "bone", "loads of " + change.bone(), "bone");
      LoadCheck check = new LoadCheck(part, change);
      check.loads().filter(local -> first).ifPresent(loads::add);
      problems.addAll(check.problems());
    }
  }

  private static String limitKey(LimitChange change) {
    return change.principle() + " " + change.limit() + " " + change.where().orElse("");
  }

  private <T> void keep(Card card, Optional<T> sound, ReadPart part, Map<ReadPart, T> into) {
    sound.ifPresentOrElse(change -> into.put(part, change), () -> faulty.add(card.id()));
  }

  private boolean first(ReadPart part, String field, String key, String what) {
    String before = taken.putIfAbsent(key, part.pointer());
    if (before != null) {
      problems.add(
          part.error(field, "a second change of it", "one change of each " + what)
              .withHint("The first stands at " + before + "."));
    }
    return before == null;
  }

  private static Map<ReadPart, LocalLimit> of(Map<ReadPart, LocalLimit> all, Card card) {
    Map<ReadPart, LocalLimit> mine = new LinkedHashMap<>(all);
    mine.values().removeIf(limit -> !limit.principle().equals(card.id()));
    return mine;
  }

  private Map<ReadPart, LocalSeverity> ofSeverities(Card card) {
    Map<ReadPart, LocalSeverity> mine = new LinkedHashMap<>(severities);
    mine.values().removeIf(severity -> !severity.principle().equals(card.id()));
    return mine;
  }
}
