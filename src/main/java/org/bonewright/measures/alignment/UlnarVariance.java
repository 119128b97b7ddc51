package org.bonewright.measures.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.ForearmFit;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** By how much the length of the two forearm bones against each other has changed. */
final class UlnarVariance implements Measure {

  private static final Dimension ANY =
      new Dimension(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false, "");
  private static final Dimension NOTHING = new Dimension(0, 0, false, "");

  @Override
  public Definition definition() {
    return new Definition(
        "ulnar-variance-difference",
        "Length of radius and ulna against each other",
        Definition.millimetres(),
        "difference of ulnar variance against the other side, as stated; else the shortening of"
            + " this bone less that of the other, where the other was broken",
        List.of(
            "operations/reduction/forearm/ulnarVarianceDifferenceMm",
            "operations/reduction/shorteningMm",
            "companion/operations/reduction/shorteningMm"),
        "Schemitsch and Richards, JBJS Am 1992, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    Beside beside = Beside.of(scene);
    if (!beside.pair()) {
      return new Reading.None("no forearm bone");
    }
    Optional<Quantity> stated =
        scene
            .reduction()
            .flatMap(Reduction::forearm)
            .flatMap(ForearmFit::ulnarVarianceDifferenceMm);
    if (stated.isPresent()) {
      return Reading.number(Plane.off(stated.get()), "as stated", asked(scene));
    }
    List<MissingFact> missing = new ArrayList<>(List.of(asked(scene)));
    Optional<Quantity> here = scene.reduction().flatMap(Reduction::shorteningMm);
    Dimension apart = here.map(q -> Dimension.stated(q, "")).orElse(ANY);
    if (beside.mayBeBroken()) {
      Dimension there =
          beside
              .reduction()
              .flatMap(Reduction::shorteningMm)
              .map(q -> Dimension.stated(q, ""))
              .orElse(ANY);
      apart = apart.equals(ANY) || there.equals(ANY) ? ANY : apart.minus(there);
      missing.add(beside.missing(scene));
    } else {
      apart = apart.equals(ANY) ? ANY : apart.minus(NOTHING);
    }
    return apart.equals(ANY)
        ? new Reading.Unknown(missing)
        : Reading.number(
            apart.magnitude(),
            "shortening of this bone against the other",
            missing.toArray(MissingFact[]::new));
  }

  private static MissingFact asked(Scene scene) {
    return scene.missingOfFixing(
        "reduction/forearm/ulnarVarianceDifferenceMm",
        "By how many mm does ulnar variance differ from the other side at the end?");
  }
}
