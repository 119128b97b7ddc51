package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How long an operation held before its failure was clear. */
final class WeeksToFailure implements Measure {

  private static final double WEEK = 7;

  @Override
  public Definition definition() {
    return new Definition(
        "weeks-to-failure",
        "Time to failure",
        new Definition.Domain.Numbers("wk", "weeks", 0, Double.POSITIVE_INFINITY, 0),
        "from the operation to the day on which its failure was clear; where the interval itself is"
            + " stated, what both allow",
        List.of("operations/day", "operations/outcome/day", "operations/outcome/weeksAfter"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("operation-failed", "no")) {
      return new Reading.None("did not fail");
    }
    Optional<Dimension> stated =
        scene.operation().outcome().flatMap(Outcome::weeksAfter).map(w -> Dimension.stated(w, ""));
    Optional<Quantity> began = scene.operation().day();
    Optional<Quantity> ended = scene.operation().outcome().flatMap(Outcome::day);
    MissingFact missing =
        ended.isEmpty()
            ? scene.missing("outcome/day", "On which day was it clear that it had failed?")
            : scene.missing("day", "On which day was the operation?");
    if (began.isEmpty() || ended.isEmpty()) {
      return stated
          .map(weeks -> Reading.number(weeks, "as stated", missing))
          .orElseGet(() -> Reading.unknown(missing));
    }
    Dimension byDays =
        new Dimension(
            Math.max(0, ended.get().min() - began.get().max()) / WEEK,
            Math.max(0, ended.get().max() - began.get().min()) / WEEK,
            false,
            "");
    return Reading.number(
        stated.map(weeks -> both(weeks, byDays)).orElse(byDays),
        "from the operation to its failure",
        missing);
  }

  /** Return what both allow; where they miss each other by a few days of rounding, the days. */
  private static Dimension both(Dimension stated, Dimension byDays) {
    double min = Math.max(stated.min(), byDays.min());
    double max = Math.min(stated.max(), byDays.max());
    return min <= max ? new Dimension(min, max, false, "") : byDays;
  }
}
