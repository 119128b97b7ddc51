package org.bonewright.change;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is judged of the plans of a case.
 *
 * @param found the verdicts, in the order of the subjects and cards
 */
record JudgedPlan(Map<Place, Found> found) {

  /** Keeps the verdicts as they are now, in their order. */
  JudgedPlan {
    found = Collections.unmodifiableMap(new LinkedHashMap<>(found));
  }

  /**
   * A verdict.
   *
   * @param standing the verdict and how grave it is
   * @param words what it says, where it is unmet or unknown; else empty
   * @param asks what would have to be known, where it is unknown: what settles it alone first
   * @param waitsForFacts whether it is unknown for lack of nothing but facts, none of them of the
   *     plan itself
   */
  record Found(
      PlanChange.Standing standing, String words, List<String> asks, boolean waitsForFacts) {

    Found {
      asks = List.copyOf(asks);
    }
  }

  /** Return how a principle stands on a subject, if it is judged there. */
  Optional<PlanChange.Standing> standing(Place place) {
    return Optional.ofNullable(found.get(place)).map(Found::standing);
  }
}
