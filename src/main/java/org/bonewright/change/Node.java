package org.bonewright.change;

import java.util.Comparator;
import java.util.List;

/**
 * A plan that was reached by some moves, and judged.
 *
 * @param file the case file with the plan
 * @param judged its verdicts
 * @param path the options taken, in order; empty for the plan as drawn at first
 * @param open how much it leaves open
 * @param price what it costs
 */
record Node(
    PlanInFile file, JudgedPlan judged, List<Taken> path, OpenPlaces.Count open, Price price) {

  /** What leaves the least open comes first; of those the cheapest. */
  static final Comparator<Node> BEST = Comparator.comparing(Node::open).thenComparing(Node::price);

  Node {
    path = List.copyOf(path);
  }

  /**
   * An option that was taken.
   *
   * @param forPlace what it was to close
   * @param option the option
   * @param before the verdicts before
   * @param after the verdicts after
   */
  record Taken(Place forPlace, Option option, JudgedPlan before, JudgedPlan after) {}

  /**
   * Return what the last option was to close.
   *
   * @throws IllegalStateException if no option was taken
   */
  Place lastPlace() {
    if (path.isEmpty()) {
      throw new IllegalStateException("no move was made");
    }
    return path.get(path.size() - 1).forPlace();
  }
}
