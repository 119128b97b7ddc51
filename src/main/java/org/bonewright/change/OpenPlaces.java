package org.bonewright.change;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/**
 * What a plan leaves open that a change could be asked to close: what is unmet, and what a change
 * made unknown. So nothing counts as closed because a change put it in doubt. What was unknown from
 * the first is to be found out, not changed; so is what a principle asks that did not apply at
 * first, if it asks for facts that are none of the plan.
 */
final class OpenPlaces {

  private final JudgedPlan first;

  /**
   * Make it.
   *
   * @param first the plan as drawn at first
   */
  OpenPlaces(JudgedPlan first) {
    this.first = first;
  }

  /** How many places are open, by how grave they are. */
  record Count(int critical, int major, int minor) implements Comparable<Count> {

    private static final Comparator<Count> ORDER =
        Comparator.comparingInt(Count::critical)
            .thenComparingInt(Count::major)
            .thenComparingInt(Count::minor);

    @Override
    public int compareTo(Count other) {
      return ORDER.compare(this, other);
    }

    /** Return whether nothing critical or major is open. */
    boolean isEnough() {
      return critical == 0 && major == 0;
    }

    /** Return whether less that is critical or major is open, in that order. */
    boolean isBelow(Count other) {
      return critical < other.critical || (critical == other.critical && major < other.major);
    }
  }

  /** Return how much is open. */
  Count count(JudgedPlan judged) {
    return new Count(
        number(judged, Severity.CRITICAL),
        number(judged, Severity.MAJOR),
        number(judged, Severity.MINOR));
  }

  private int number(JudgedPlan judged, Severity severity) {
    return (int)
        judged.found().entrySet().stream()
            .filter(entry -> entry.getValue().standing().grave() == severity)
            .filter(entry -> isOpen(entry.getKey(), entry.getValue()))
            .count();
  }

  private static Severity severity(Map.Entry<Place, JudgedPlan.Found> entry) {
    return entry.getValue().standing().grave();
  }

  /** Return what is open and critical or major, the gravest first. */
  List<Place> grave(JudgedPlan judged) {
    return judged.found().entrySet().stream()
        .filter(entry -> isGrave(entry.getKey(), entry.getValue()))
        .sorted(Comparator.comparing(OpenPlaces::severity).reversed())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Return whether a place is critical. */
  boolean isCritical(JudgedPlan judged, Place place) {
    return judged.standing(place).filter(s -> s.grave() == Severity.CRITICAL).isPresent();
  }

  /** Return what is open and grave in the second and was not in the first. */
  List<Place> opened(JudgedPlan before, JudgedPlan after) {
    List<Place> then = grave(before);
    return grave(after).stream().filter(place -> !then.contains(place)).toList();
  }

  /** Return whether something critical or major is open that was not open as gravely at first. */
  boolean opensMore(JudgedPlan judged) {
    return grave(judged).stream()
        .anyMatch(place -> !wasOpen(place, judged.standing(place).map(s -> s.grave())));
  }

  private boolean wasOpen(Place place, Optional<Severity> grave) {
    return Optional.ofNullable(first.found().get(place))
        .filter(then -> isGrave(place, then))
        .filter(
            then -> grave.filter(now -> then.standing().grave().compareTo(now) >= 0).isPresent())
        .isPresent();
  }

  private boolean isGrave(Place place, JudgedPlan.Found found) {
    return found.standing().grave().compareTo(Severity.MAJOR) >= 0 && isOpen(place, found);
  }

  private boolean isOpen(Place place, JudgedPlan.Found found) {
    return switch (found.standing().verdict()) {
      case MET, NOT_APPLICABLE -> false;
      case UNMET -> true;
      case UNKNOWN -> !isToFindOut(place, found);
    };
  }

  private boolean isToFindOut(Place place, JudgedPlan.Found found) {
    Optional<PlanChange.Standing> then = first.standing(place);
    boolean unknownThen =
        then.filter(s -> s.verdict() == VerdictKind.UNKNOWN)
            .filter(s -> s.grave().compareTo(found.standing().grave()) >= 0)
            .isPresent();
    boolean newlyAsked =
        found.waitsForFacts()
            && then.filter(s -> s.verdict() != VerdictKind.NOT_APPLICABLE).isEmpty();
    return unknownThen || newlyAsked;
  }
}
