package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Opening;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many holes a subject opens and leaves empty, how wide they are, and where they lie. */
final class OpenHoles implements Measure {

  /** What is asked about them. */
  enum What {
    /** How many there are. */
    LEFT,
    /** How many no implant spans. */
    BEYOND,
    /** The most of these in one line, beyond one end. */
    IN_LINE,
    /** The widest of those that no implant spans. */
    RATIO_BEYOND,
    /** The widest of those that an implant spans. */
    RATIO_SPANNED,
    /** The one that lies closest to the end of an implant. */
    TO_END
  }

  private static final String OPENED =
      "holes that are opened by taking metal out and stay empty; ones opened at an earlier operation"
          + " are taken as filled in";
  private static final List<String> INPUTS =
      List.of("operations/removed", "operations/fixation", "operations/fixation/place");

  private final What what;

  OpenHoles(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case LEFT ->
          of("open-holes-left", "Open holes left", Definition.count(1), "count of " + OPENED);
      case BEYOND ->
          of(
              "open-holes-beyond",
              "Open holes beyond the implant",
              Definition.count(1),
              "count of open holes (open-holes-left) that lie beyond the ends of every plate, and"
                  + " beyond the outermost bolts or pins of every nail and fixator");
      case IN_LINE ->
          of(
              "open-holes-in-line",
              "Open holes in a line",
              Definition.count(1),
              "the most open holes beyond one end of the implants (open-holes-beyond) whose entries"
                  + " lie less than a diameter apart round the bone");
      case RATIO_BEYOND ->
          of(
              "open-hole-ratio-beyond",
              "Widest open hole beyond the implant",
              Definition.ratio(),
              "diameter of the hole over the outer diameter of the bone at its level, for open holes"
                  + " that no implant spans (open-holes-beyond); 0 where there is none");
      case RATIO_SPANNED ->
          of(
              "open-hole-ratio-spanned",
              "Widest open hole spanned",
              Definition.ratio(),
              "diameter of the hole over the outer diameter of the bone at its level, for open holes"
                  + " (open-holes-left) that a plate, nail or fixator spans; 0 where there is none");
      case TO_END ->
          of(
              "open-hole-to-end",
              "Open hole to the end of the implant",
              Definition.ratio(),
              "bone between the edge of an open hole beyond the implants (open-holes-beyond) and the"
                  + " nearest end, in outer diameters of the bone at the hole");
    };
  }

  private static Definition of(String id, String title, Definition.Domain domain, String formula) {
    return new Definition(id, title, domain, formula, INPUTS, "common practice; our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    if (!gaps.isEmpty()) {
      return new Reading.Unknown(gaps);
    }
    Optional<List<OpenHole>> all = OpenHole.all(scene);
    return all.map(holes -> reading(scene, holes))
        .orElseGet(() -> Reading.unknown(Cover.missing(scene)));
  }

  private Reading reading(Scene scene, List<OpenHole> holes) {
    List<OpenHole> beyond = holes.stream().filter(OpenHole::maybeBeyond).toList();
    return switch (what) {
      case LEFT -> count(scene, holes, OpenHole::certain);
      case BEYOND -> count(scene, beyond, OpenHole::certainlyBeyond);
      case IN_LINE -> inLine(scene, beyond);
      case RATIO_BEYOND -> widest(scene, beyond, OpenHole::certainlyBeyond);
      case RATIO_SPANNED ->
          widest(
              scene,
              holes.stream().filter(hole -> hole.covered() != Cover.Answer.NO).toList(),
              hole -> hole.certain() && hole.covered() == Cover.Answer.YES);
      case TO_END -> toEnd(scene, beyond);
    };
  }

  private static Reading count(
      Scene scene, List<OpenHole> possible, Predicate<OpenHole> certainly) {
    int min = (int) possible.stream().filter(certainly).count();
    return amount(scene, new Dimension(min, possible.size(), false, ""), names(possible));
  }

  private static Reading widest(
      Scene scene, List<OpenHole> possible, Predicate<OpenHole> certainly) {
    Extremes ratios = new Extremes();
    ratios.add(new Dimension(0, 0, false, ""), true);
    possible.forEach(hole -> ratios.add(hole.ratio(), certainly.test(hole)));
    return amount(scene, ratios.most().orElseThrow(), names(possible));
  }

  private static Reading toEnd(Scene scene, List<OpenHole> beyond) {
    Extremes distances = new Extremes();
    for (OpenHole hole : beyond) {
      hole.toEnd().ifPresent(distance -> distances.add(distance, hole.certainlyBeyond()));
    }
    return distances
        .least()
        .map(least -> amount(scene, least, names(beyond)))
        .orElseGet(() -> new Reading.None("no open hole beyond an implant"));
  }

  private static Reading inLine(Scene scene, List<OpenHole> beyond) {
    Holes holes = Holes.in(scene);
    List<Cover> covers = Cover.all(scene).orElse(List.of());
    double middle =
        covers.stream().mapToDouble(c -> c.from().middle() + c.to().middle()).average().orElse(0)
            / 2;
    int min = 0;
    int max = 0;
    for (OpenHole hole : beyond) {
      List<OpenHole> sameEnd =
          beyond.stream().filter(o -> (level(o) < middle) == (level(hole) < middle)).toList();
      int certain =
          hole.certainlyBeyond()
              ? (int)
                  sameEnd.stream()
                      .filter(o -> o.certainlyBeyond() && inLine(holes, hole, o, true))
                      .count()
              : 0;
      int possible = (int) sameEnd.stream().filter(o -> inLine(holes, hole, o, false)).count();
      min = Math.max(min, certain);
      max = Math.max(max, possible);
    }
    return amount(scene, new Dimension(min, max, false, ""), names(beyond));
  }

  private static double level(OpenHole hole) {
    return hole.track().level().orElseThrow().middle();
  }

  private static boolean inLine(Holes holes, OpenHole one, OpenHole other, boolean certainly) {
    if (one.equals(other)) {
      return true;
    }
    Dimension outer = holes.outer(one.track());
    Dimension across = entry(one.track(), outer).across(entry(other.track(), outer), outer);
    Dimension a = one.track().diameter();
    Dimension b = other.track().diameter();
    return certainly
        ? across.max() < Math.max(a.min(), b.min())
        : across.min() < Math.max(a.max(), b.max());
  }

  private static Opening entry(Track track, Dimension outer) {
    return Opening.of(track, outer).get(0);
  }

  private static String names(List<OpenHole> holes) {
    if (holes.isEmpty()) {
      return "none";
    }
    String last = holes.get(holes.size() - 1).track().name();
    return holes.size() == 1
        ? last
        : holes.size() + " holes, " + holes.get(0).track().name() + " to " + last;
  }

  private static Reading amount(Scene scene, Dimension number, String working) {
    return new Reading.Amount(
        number.min(),
        number.max(),
        number.assumed() ? Kind.ASSUMED : Kind.FACT,
        working,
        number.min() == number.max() ? List.of() : List.of(Cover.missing(scene)));
  }
}
