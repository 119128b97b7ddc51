package org.bonewright.measures.lag;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.line.StatedPattern;

/**
 * How far a lag screw stays from the tips of the fragments, in diameters of its head.
 *
 * <p>A screw at about a right angle to a steep line goes in through one fragment and out through
 * the other. Where it runs away from the landmark, the first has its tip at the far end of the zone
 * and the second at the near end; where it runs towards the landmark, the other way round.
 */
final class LagToTip implements Measure {

  private static final String ZONE = "injury/zone";

  @Override
  public Definition definition() {
    return new Definition(
        "lag-to-tip",
        "Lag screw to the tip of a fragment",
        Definition.ratio(),
        "for an oblique or spiral line: distance along the bone from the entry, and from the exit, of"
            + " a lag screw to the tip of the fragment that it passes there, divided by the diameter"
            + " of its head (5 mm up to a thread of 3 mm, 6 up to 4, else 8); the smallest. None for"
            + " other patterns",
        List.of(
            "operations/fixation/atMm",
            "operations/fixation/exitMm",
            "operations/fixation/diameterMm",
            "injury/pattern",
            ZONE),
        "head diameters from memory; the reckoning is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<LagScrew> screws = LagScrews.of(scene);
    if (screws.isEmpty()) {
      return LagScrews.none(scene);
    }
    Optional<Injury.Pattern> pattern = StatedPattern.of(scene);
    if (pattern.isEmpty()) {
      return Reading.unknown(StatedPattern.missing(scene));
    }
    if (pattern.get() != Injury.Pattern.OBLIQUE && pattern.get() != Injury.Pattern.SPIRAL) {
      return new Reading.None("no single oblique or spiral line");
    }
    FractureZone zone = scene.zone();
    if (zone.centre().isEmpty() || zone.length().isEmpty()) {
      return Reading.unknown(
          scene.missingInCase(
              ZONE, "From which level to which is the bone broken or not united, in mm?"));
    }
    return LagScrews.least(
        scene,
        screws,
        screw -> inHeads(screw, zone),
        screw -> missing(scene, screw),
        Kind.FACT,
        "the smallest of " + screws.size());
  }

  private static MissingFact missing(Scene scene, LagScrew screw) {
    return LagScrews.missing(
        scene,
        screw,
        "atMm",
        "At which level does " + screw.id() + " go in and come out, and how thick is it, in mm?");
  }

  private static Optional<Dimension> inHeads(LagScrew screw, FractureZone zone) {
    if (screw.atMm().isEmpty() || screw.exitMm().isEmpty() || screw.diameterMm().isEmpty()) {
      return Optional.empty();
    }
    Quantity in = screw.atMm().get();
    Quantity out = screw.exitMm().get();
    Dimension half = zone.length().orElseThrow();
    Dimension centre = zone.centre().orElseThrow();
    Dimension near = new Dimension(-half.max() / 2, -half.min() / 2, false, "").plus(centre);
    Dimension far = new Dimension(half.min() / 2, half.max() / 2, false, "").plus(centre);
    Dimension away = lesser(between(in, far), between(near, out));
    Dimension towards = lesser(between(near, in), between(out, far));
    Dimension distance =
        out.min() > in.max() ? away : out.max() < in.min() ? towards : either(away, towards);
    Dimension heads =
        new Dimension(
            head(screw.diameterMm().get().min()), head(screw.diameterMm().get().max()), false, "");
    return Optional.of(distance.over(heads));
  }

  private static Dimension between(Quantity from, Dimension to) {
    return notBelowZero(to.min() - from.max(), to.max() - from.min());
  }

  private static Dimension between(Dimension from, Quantity to) {
    return notBelowZero(to.min() - from.max(), to.max() - from.min());
  }

  private static Dimension notBelowZero(double min, double max) {
    return new Dimension(Math.max(0, min), Math.max(0, max), false, "");
  }

  private static Dimension lesser(Dimension a, Dimension b) {
    return new Dimension(Math.min(a.min(), b.min()), Math.min(a.max(), b.max()), false, "");
  }

  private static Dimension either(Dimension a, Dimension b) {
    return new Dimension(Math.min(a.min(), b.min()), Math.max(a.max(), b.max()), false, "");
  }

  /** Return the usual diameter of the head in mm for a thread in mm; from memory. */
  private static double head(double thread) {
    return thread <= 3 ? 5 : thread <= 4 ? 6 : 8;
  }
}
