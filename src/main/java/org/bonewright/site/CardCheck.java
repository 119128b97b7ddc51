package org.bonewright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.principles.Card;
import org.bonewright.principles.Card.Limit;
import org.bonewright.principles.LocalLimit;
import org.bonewright.principles.LocalSeverity;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Spoken;
import org.jspecify.annotations.Nullable;

/**
 * Whether all changes of one card together leave it whole: its limits and severities in their
 * order, its worlds not too many, and nothing that it can say silenced.
 */
final class CardCheck {

  private final RuleSet rules;
  private final Card card;
  private final Card local;
  private final Map<ReadPart, LocalLimit> limits;
  private final Map<ReadPart, LocalSeverity> severities;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * Prepare the check.
   *
   * @param card the published card
   * @param limits its local limits, by where they stand in the file
   * @param severities its local severities, by where they stand in the file
   */
  CardCheck(
      RuleSet rules,
      Card card,
      Map<ReadPart, LocalLimit> limits,
      Map<ReadPart, LocalSeverity> severities) {
    this.rules = rules;
    this.card = card;
    this.limits = limits;
    this.severities = severities;
    Card changed = card;
    for (LocalLimit limit : limits.values()) {
      changed = limit.on(changed);
    }
    this.local = changed;
  }

  /** Return every problem. */
  List<Problem> problems() {
    severities.forEach(this::severityOrder);
    if (limits.isEmpty()) {
      return problems;
    }
    limits.forEach(this::limitOrder);
    ReadPart first = limits.keySet().iterator().next();
    Spoken spoken = new Spoken(rules);
    int worlds = spoken.worlds(local);
    if (worlds > Spoken.most()) {
      problems.add(
          first.error(
              "value",
              "limits of " + card.id() + " that make " + worlds + " cases to judge",
              "at most " + Spoken.most()));
    } else if (problems.isEmpty()) {
      List<String> silenced = spoken.silenced(card, local);
      if (!silenced.isEmpty()) {
        problems.add(
            first.error(
                "value",
                "limits with which " + card.id() + " can no longer be " + silenced.get(0),
                "limits that leave every verdict of the principle possible"));
      }
    }
    return problems;
  }

  /** A milder fault must not count for more than a graver one. */
  private void severityOrder(ReadPart part, LocalSeverity change) {
    for (Severity other : card.grades()) {
      Severity counts = counts(other);
      boolean turned =
          other.compareTo(change.from()) < 0
              ? counts.compareTo(change.to()) > 0
              : counts.compareTo(change.to()) < 0;
      if (other != change.from() && turned) {
        problems.add(
            part.error(
                "to",
                "the text \""
                    + change.to().word()
                    + "\", where "
                    + other.word()
                    + " counts as "
                    + counts.word(),
                "severities in the order of those that the principle gives"));
        return;
      }
    }
  }

  private Severity counts(Severity grade) {
    return severities.values().stream()
        .filter(change -> change.from() == grade)
        .map(LocalSeverity::to)
        .findFirst()
        .orElse(grade);
  }

  /** Of two limits of one need the higher stays the higher, for the same words. */
  private void limitOrder(ReadPart part, LocalLimit change) {
    Limit mine = local.limits().get(change.limit());
    for (Map.Entry<String, Limit> other : local.limits().entrySet()) {
      if (mine != null
          && !other.getKey().equals(change.limit())
          && other.getValue().of().equals(mine.of())
          && turned(part, change, mine, other.getKey(), other.getValue())) {
        return;
      }
    }
  }

  private boolean turned(ReadPart part, LocalLimit change, Limit mine, String name, Limit other) {
    TreeSet<String> needs = new TreeSet<>(mine.by());
    needs.addAll(other.by());
    for (Map<String, String> words : new Combinations(rules, card, List.copyOf(needs)).all()) {
      double published =
          at(card.limits().get(change.limit()), words) - at(card.limits().get(name), words);
      double here = at(mine, words) - at(other, words);
      if (published != 0 && Math.signum(published) != Math.signum(here) && !Double.isNaN(here)) {
        problems.add(
            part.error(
                "value",
                "the number "
                    + Dimension.number(at(mine, words))
                    + ", where "
                    + name
                    + " is "
                    + Dimension.number(at(other, words)),
                "a number "
                    + (published > 0 ? "above " : "below ")
                    + name
                    + ", as published, so that graver stays graver"));
        return true;
      }
    }
    return false;
  }

  private static double at(@Nullable Limit limit, Map<String, String> words) {
    return limit == null ? Double.NaN : limit.at(Combinations.joined(limit, words));
  }
}
