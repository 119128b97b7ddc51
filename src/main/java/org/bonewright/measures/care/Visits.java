package org.bonewright.measures.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The visits after an operation: how many, and the longest time without one. */
final class Visits implements Measure {

  /** What is asked. */
  enum What {
    NUMBER,
    LONGEST_INTERVAL
  }

  private final What what;

  Visits(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case NUMBER ->
          new Definition(
              "visits-set",
              "Visits",
              Definition.count(1),
              "visits named; not in a plan: zero",
              List.of("operations/aftercare/visitsWeeks"),
              "bookkeeping");
      case LONGEST_INTERVAL ->
          new Definition(
              "longest-review-interval",
              "Longest time without a visit",
              new Definition.Domain.Numbers("wk", "weeks", 0, Double.POSITIVE_INFINITY, 0),
              "longest interval between the operation and the first visit, or between visits that"
                  + " follow each other",
              List.of("operations/aftercare/visitsWeeks"),
              "bookkeeping");
    };
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missing("aftercare/visitsWeeks", "In which weeks was the patient seen, with films?");
    Optional<List<Quantity>> weeks = scene.operation().aftercare().flatMap(Aftercare::visitsWeeks);
    if (weeks.isEmpty() && !scene.subject().planned()) {
      return Reading.unknown(missing);
    }
    List<Quantity> visits = new ArrayList<>(weeks.orElse(List.of()));
    if (what == What.NUMBER) {
      return Reading.number(visits.size(), visits.isEmpty() ? "none named" : "as named");
    }
    if (visits.isEmpty()) {
      return new Reading.None("no visit");
    }
    visits.add(0, Quantity.of(0));
    double min = 0;
    double max = 0;
    for (int i = 1; i < visits.size(); i++) {
      min = Math.max(min, visits.get(i).min() - visits.get(i - 1).max());
      max = Math.max(max, visits.get(i).max() - visits.get(i - 1).min());
    }
    return Reading.number(new Dimension(min, max, false, ""), "between visits", missing);
  }
}
