package org.bonewright.measures.load;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.LoadStep;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * How far the limb may be loaded.
 *
 * @param limitKg the limit in kg, assumed where none is told; empty where there is none
 * @param perhapsFree whether the load may have had no limit all the same
 * @param inWords the same in words
 * @param missing what would settle it
 */
record Allowance(
    Optional<Dimension> limitKg, boolean perhapsFree, String inWords, List<MissingFact> missing) {

  /** As long as this the bone bears hardly anything itself, days; our convention. */
  private static final double EARLY_DAYS = 42;

  /** Return what was allowed in the first six weeks after the operation. */
  static Allowance first(Scene scene) {
    Optional<Aftercare> aftercare = scene.operation().aftercare();
    Optional<List<LoadStep>> steps = aftercare.flatMap(Aftercare::load);
    boolean planned = scene.subject().planned();
    if (steps.isEmpty()) {
      return planned
          ? free("no load limit planned")
          : new Allowance(
              Optional.of(new Dimension(0, 0, true, "")),
              true,
              "load limit not told: from light to full use",
              List.of(missing(scene)));
    }
    if (steps.get().isEmpty()) {
      return free(planned ? "no load limit planned" : "no load limit given");
    }
    Dimension limit = early(steps.get());
    String words = "limit of " + limit.numbers() + " kg";
    return planned
        ? new Allowance(Optional.of(limit), false, words, asked(limit, scene))
        : kept(limit, words, aftercare.flatMap(Aftercare::followed).orElse(Answer.UNKNOWN), scene);
  }

  /** The highest limit among the first and those that begin before six weeks are over. */
  private static Dimension early(List<LoadStep> steps) {
    Dimension highest = Dimension.stated(steps.get(0).limitKg(), "");
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i - 1).untilDay().max() < EARLY_DAYS) {
        highest = highest.atLeast(Dimension.stated(steps.get(i).limitKg(), ""));
      }
    }
    return highest;
  }

  private static Allowance kept(Dimension limit, String words, Answer followed, Scene scene) {
    List<MissingFact> exact = asked(limit, scene);
    return switch (followed) {
      case YES -> new Allowance(Optional.of(limit), false, words, exact);
      case NO ->
          new Allowance(Optional.of(limit), true, words + ", not kept: up to full use", List.of());
      case UNKNOWN ->
          new Allowance(
              Optional.of(limit),
              true,
              words + ", not told whether it was kept: up to full use",
              List.of(scene.missing("aftercare/followed", "Were the load limits kept?")));
    };
  }

  /** Return whether the file tells a limit. */
  boolean tellsALimit() {
    return limitKg.filter(limit -> !limit.assumed()).isPresent();
  }

  private static Allowance free(String words) {
    return new Allowance(Optional.empty(), true, words, List.of());
  }

  private static List<MissingFact> asked(Dimension limit, Scene scene) {
    return limit.min() == limit.max() ? List.of() : List.of(missing(scene));
  }

  private static MissingFact missing(Scene scene) {
    return scene.missing("aftercare/load", "Which load was allowed, in kg, and until when?");
  }
}
