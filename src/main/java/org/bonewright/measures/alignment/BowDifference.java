package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.ForearmFit;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** By how much the bow of the radius differs from the other side. */
final class BowDifference implements Measure {

  /** What of the bow. */
  enum What {
    HEIGHT,
    PLACE
  }

  private final What what;

  BowDifference(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return what == What.HEIGHT
        ? new Definition(
            "bow-height-difference",
            "Bow of the radius, height",
            Definition.millimetres(),
            "difference against the other side, as stated; none where the radius was never broken",
            List.of("operations/reduction/forearm/bowHeightDifferenceMm"),
            "Schemitsch and Richards, JBJS Am 1992, for its meaning")
        : new Definition(
            "bow-place-difference",
            "Bow of the radius, place",
            new Definition.Domain.Numbers("%", "%", 0, 100, 0),
            "difference against the other side in percent of the length of the radius, as stated;"
                + " none where the radius was never broken",
            List.of("operations/reduction/forearm/bowPlaceDifferencePercent"),
            "Schemitsch and Richards, JBJS Am 1992, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    Beside beside = Beside.of(scene);
    if (!beside.pair()) {
      return new Reading.None("no forearm bone");
    }
    if (scene.boneName() == BoneName.ULNA && !beside.mayBeBroken()) {
      return new Reading.None("the radius was never broken");
    }
    MissingFact missing =
        scene.missingOfFixing(
            "reduction/forearm/bowHeightDifferenceMm",
            "How far does the bow of the radius differ from the other side: height in mm, place in"
                + " percent?");
    return scene
        .reduction()
        .flatMap(Reduction::forearm)
        .flatMap(this::value)
        .map(stated -> Reading.number(Plane.off(stated), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private Optional<Quantity> value(ForearmFit fit) {
    return what == What.HEIGHT ? fit.bowHeightDifferenceMm() : fit.bowPlaceDifferencePercent();
  }
}
