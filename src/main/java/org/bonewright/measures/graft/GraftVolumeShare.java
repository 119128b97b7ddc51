package org.bonewright.measures.graft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Graft;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much of the volume that the defect takes the graft fills. */
final class GraftVolumeShare implements Measure {

  private static final double SPARE = 1.2;
  private static final double MM3_IN_ML = 1000;

  @Override
  public Definition definition() {
    return new Definition(
        "graft-volume-share",
        "Share of the defect that the graft fills",
        new Definition.Domain.Numbers("%", "%", 0, Double.POSITIVE_INFINITY, 0),
        "volume of the graft over the volume needed: cross-section of the bone at the zone (π/4 ·"
            + " outer diameter²) times the gap left times 1.2. Volume not stated, or planned beyond"
            + " what the donor gives: packed to loose volume of the donor",
        List.of(
            "operations/biology/volumeMl",
            "operations/biology/donor",
            "bone/sections",
            "gap-widest"),
        "donor volumes: Burk et al.; Engelstad and Morse; Belthur et al., CORR 2008; factor 1.2 from"
            + " memory");
  }

  @Override
  public Reading take(Scene scene) {
    Biology biology = Biology.of(scene);
    if (!biology.told()) {
      return Reading.unknown(Biology.asked(scene));
    }
    List<Graft> filling = biology.grafts().stream().filter(GraftSupply::fills).toList();
    if (filling.isEmpty()) {
      return new Reading.None("no graft that fills");
    }
    Reading gap = scene.read("gap-widest");
    if (!(gap instanceof Reading.Amount defect)) {
      return new Reading.Unknown(gap.missing());
    }
    if (defect.max() <= 0) {
      return new Reading.None("no gap left");
    }
    return share(scene, filling, defect);
  }

  private static Reading share(Scene scene, List<Graft> filling, Reading.Amount defect) {
    List<MissingFact> missing = new ArrayList<>(defect.missing());
    double least = 0;
    double most = 0;
    boolean assumed = defect.kind() == Kind.ASSUMED;
    boolean open = false;
    for (Graft graft : filling) {
      Optional<Dimension> volume = GraftSupply.of(graft, scene.subject().planned());
      least += volume.map(Dimension::min).orElse(0.0);
      most += volume.map(Dimension::max).orElse(Double.POSITIVE_INFINITY);
      assumed |= volume.map(Dimension::assumed).orElse(false);
      open |= volume.map(v -> v.min() < v.max()).orElse(true);
    }
    Dimension outer = scene.bone().outerAt(scene.zone());
    if (outer.min() < outer.max()) {
      missing.add(
          scene.missingInCase(
              "bone/sections", "What is the outer diameter of the bone at the zone, in mm?"));
    }
    if (open) {
      missing.add(
          scene.missing("biology/volumeMl", "How many mL of graft, and from which donor site?"));
    }
    double needMin = needed(outer.min(), defect.min());
    double needMax = needed(outer.max(), defect.max());
    double from = Double.isInfinite(needMax) ? 0 : 100 * least / needMax;
    double to = needMin <= 0 ? Double.POSITIVE_INFINITY : 100 * most / needMin;
    return new Reading.Amount(
        from,
        to,
        assumed || outer.assumed() ? Kind.ASSUMED : Kind.FACT,
        between(least, most) + " mL for " + between(needMin, needMax) + " mL needed",
        from == to ? List.of() : missing);
  }

  private static String between(double min, double max) {
    return Double.isInfinite(max)
        ? "at least " + Dimension.number(min)
        : new Dimension(min, max, false, "").numbers();
  }

  private static double needed(double outer, double gap) {
    return Math.PI / 4 * outer * outer * gap * SPARE / MM3_IN_ML;
  }
}
