package org.bonewright.measures.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.GapLeft;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The widest cortical gap left at the line. */
final class GapWidest implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "gap-widest",
        "Gap",
        Definition.millimetres(),
        "the wider of the gap under the plate and the gap on the far cortex, at the end of the"
            + " operation",
        List.of("operations/reduction/gapNearMm", "operations/reduction/gapFarMm"),
        "usual measure on two views; Marsell and Einhorn, Injury 2011, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Quantity> near = scene.reduction().flatMap(Reduction::gapNearMm);
    Optional<Quantity> far = scene.reduction().flatMap(Reduction::gapFarMm);
    List<MissingFact> missing = new ArrayList<>();
    if (near.isEmpty() || !near.get().isExact()) {
      missing.add(
          scene.missingOfFixing(
              "reduction/gapNearMm",
              "How wide was the gap under the plate (first view) at the end, in mm?"));
    }
    if (far.isEmpty() || !far.get().isExact()) {
      missing.add(
          scene.missingOfFixing(
              "reduction/gapFarMm",
              "How wide was the gap on the far cortex (second view) at the end, in mm?"));
    }
    String working = "near " + shown(near) + ", far " + shown(far);
    return scene
        .reduction()
        .flatMap(GapLeft::widest)
        .map(gap -> amount(gap, working, missing))
        .orElseGet(() -> new Reading.Unknown(missing));
  }

  /** The wider of two gaps may be known though one of them is not quite. */
  private static Reading amount(Dimension gap, String working, List<MissingFact> missing) {
    return new Reading.Amount(
        gap.min(), gap.max(), Kind.FACT, working, gap.min() == gap.max() ? List.of() : missing);
  }

  private static String shown(Optional<Quantity> gap) {
    return gap.map(q -> Numbers.shown(q) + " mm").orElse("not stated");
  }
}
