package org.bonewright.measures.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The worse of the two angles on two views; of both bones where the forearm is broken twice. */
final class AngulationWorst implements Measure {

  private static final Dimension ANY = new Dimension(0, 90, false, "");
  private static final List<Plane> VIEWS = List.of(Plane.CORONAL, Plane.SAGITTAL);

  @Override
  public Definition definition() {
    return new Definition(
        "angulation-worst",
        "Angulation",
        Definition.degrees(),
        "the larger of the degrees on the two views at the end; in the forearm that of the other"
            + " bone too, where it was broken",
        List.of(
            "operations/reduction/coronalDeg",
            "operations/reduction/sagittalDeg",
            "companion/operations/reduction"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Dimension worst = new Dimension(0, 0, false, "");
    List<MissingFact> missing = new ArrayList<>();
    for (Plane view : VIEWS) {
      Optional<Quantity> stated = Standing.stated(scene, view);
      worst = larger(worst, stated.map(Plane::off).orElse(ANY));
      if (stated.map(q -> !q.isExact()).orElse(true)) {
        missing.add(Standing.missing(scene, view));
      }
    }
    Beside beside = Beside.of(scene);
    if (beside.mayBeBroken()) {
      for (Plane view : VIEWS) {
        Optional<Quantity> stated = beside.reduction().flatMap(view::of);
        Dimension there = stated.map(Plane::off).orElse(ANY);
        worst = larger(worst, beside.broken() ? there : new Dimension(0, there.max(), false, ""));
        if (stated.map(q -> !q.isExact()).orElse(true)) {
          missing.add(beside.missing(scene));
        }
      }
    }
    if (worst.equals(ANY)) {
      return new Reading.Unknown(missing.stream().distinct().toList());
    }
    return Reading.number(
        worst, "worse of two views", missing.stream().distinct().toArray(MissingFact[]::new));
  }

  private static Dimension larger(Dimension one, Dimension other) {
    return new Dimension(
        Math.max(one.min(), other.min()), Math.max(one.max(), other.max()), false, "");
  }
}
