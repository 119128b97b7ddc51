package org.bonewright.measures.limb;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Which share of the circumference was stripped in all, over a year. */
final class StrippedOfLate implements Measure {

  private static final double A_YEAR = 365;

  @Override
  public Definition definition() {
    return new Definition(
        "stripped-in-a-year",
        "Stripped in all within a year",
        Definition.percent(),
        "sum of what this operation and those of the year before it stripped, at most 100; a plan"
            + " counts all its stages, and from the last day on file",
        List.of("operations/strippedPercent", "operations/day"),
        "that stripping adds up, and that bare bone is clothed again after a year: our convention");
  }

  @Override
  public Reading take(Scene scene) {
    double min = 0;
    double max = 0;
    List<MissingFact> missing = new ArrayList<>();
    Optional<Quantity> now = now(scene);
    List<Operation> earlier = scene.doneBefore();
    for (Operation step : scene.subject().upToHere()) {
      boolean own = !earlier.contains(step);
      boolean certain = own || age(step, now, false) <= A_YEAR;
      boolean possible = own || age(step, now, true) <= A_YEAR;
      Optional<Quantity> share = step.strippedPercent();
      min += certain ? share.map(Quantity::min).orElse(0.0) : 0;
      max += possible ? share.map(Quantity::max).orElse(100.0) : 0;
      if (possible && (!certain || share.map(s -> !s.isExact()).orElse(true))) {
        missing.add(
            scene.missingInCase(
                step.id() + "/strippedPercent",
                "What share of the circumference was stripped in "
                    + step.id()
                    + (step.day().isEmpty() && !own ? ", and when?" : "?")));
      }
    }
    return Reading.number(
        new Dimension(Math.min(100, min), Math.min(100, max), false, ""),
        "sum over a year",
        missing.toArray(MissingFact[]::new));
  }

  /** Return the days since a step, the fewest or the most; without a day it may be either. */
  private static double age(Operation step, Optional<Quantity> now, boolean fewest) {
    Optional<Quantity> then = step.day();
    if (then.isEmpty() || now.isEmpty()) {
      return fewest ? 0 : Double.POSITIVE_INFINITY;
    }
    return fewest ? now.get().min() - then.get().max() : now.get().max() - then.get().min();
  }

  private static Optional<Quantity> now(Scene scene) {
    if (!scene.subject().planned()) {
      return scene.operation().day();
    }
    return scene.subject().findings().stream()
        .findFirst()
        .map(finding -> finding.day())
        .or(
            () ->
                scene.doneBefore().stream()
                    .flatMap(done -> done.day().stream())
                    .reduce((first, second) -> second));
  }
}
