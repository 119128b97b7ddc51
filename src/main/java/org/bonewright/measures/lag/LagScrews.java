package org.bonewright.measures.lag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What every measure of lag screws starts from: those that the subject puts in. */
final class LagScrews {

  private LagScrews() {}

  /** Return the lag screws that the subject puts in, as far as the file tells. */
  static List<LagScrew> of(Scene scene) {
    return scene.subject().steps().stream()
        .flatMap(step -> step.fixation().stream().flatMap(List::stream))
        .filter(LagScrew.class::isInstance)
        .map(LagScrew.class::cast)
        .toList();
  }

  /** Return whether the file tells everything that the subject puts in. */
  static boolean told(Scene scene) {
    return scene.subject().steps().stream().allMatch(step -> step.fixation().isPresent());
  }

  /** Return what is missing where the file does not tell what was put in. */
  static MissingFact untold(Scene scene) {
    return scene.missing("fixation", "Which implants were put in, lag screws among them?");
  }

  /** Return the reading of a number where no lag screw is told of. */
  static Reading none(Scene scene) {
    return told(scene) ? new Reading.None("no lag screw put in") : Reading.unknown(untold(scene));
  }

  /** Return a fact about one lag screw that the file does not state. */
  static MissingFact missing(Scene scene, LagScrew screw, String field, String question) {
    return scene.missing("fixation/" + screw.id() + "/" + field, question);
  }

  /**
   * Return the smallest of a number over the screws. A screw of which it is not told may have the
   * smallest: the reading is then a range from zero.
   *
   * @param number the number of one screw, empty where it cannot be told
   * @param missing what one screw lacks for it
   */
  static Reading least(
      Scene scene,
      List<LagScrew> screws,
      Function<LagScrew, Optional<Dimension>> number,
      Function<LagScrew, MissingFact> missing,
      Kind kind,
      String working) {
    List<MissingFact> open = new ArrayList<>();
    double min = Double.POSITIVE_INFINITY;
    double max = Double.POSITIVE_INFINITY;
    for (LagScrew screw : screws) {
      Optional<Dimension> one = number.apply(screw);
      if (one.isEmpty() || one.get().min() < one.get().max()) {
        open.add(missing.apply(screw));
      }
      min = Math.min(min, one.map(Dimension::min).orElse(0.0));
      max = Math.min(max, one.map(Dimension::max).orElse(Double.POSITIVE_INFINITY));
    }
    if (Double.isInfinite(max)) {
      return new Reading.Unknown(open);
    }
    return new Reading.Amount(min, max, kind, working, min == max ? List.of() : open);
  }
}
