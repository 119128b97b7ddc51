package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** How the tips of the plate screws lie to the far cortex. */
final class ScrewTipNumber implements Measure {

  /** What is measured. */
  enum What {
    /** Screws that fall short, on the side with more of them. */
    TOO_SHORT,
    /** The tip that stands farthest beyond the far cortex. */
    FARTHEST
  }

  /** The farthest that a case file can state. */
  private static final double MOST = 40;

  /** The shortest that a case file can state. */
  private static final double LEAST = -60;

  private final What what;

  ScrewTipNumber(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return what == What.TOO_SHORT
        ? new Definition(
            "screws-too-short",
            "Screws short of the far cortex",
            Definition.count(1),
            "plate screws meant for both cortices whose tip lies short of the outer face of the far"
                + " cortex, on the side of the zone with more of them; one whose tip is not recorded"
                + " may be short",
            inputs(),
            "after Berkowitz et al., for its meaning; from the length: length − (plate thickness +"
                + " gap under the plate + outer diameter) / cos(tilt), ± 0.5 mm")
        : new Definition(
            "screw-tip-farthest",
            "Longest screw tip",
            new Definition.Domain.Numbers("mm", "mm", LEAST, MOST, 0),
            "how far the tip of the longest plate screw stands beyond the far cortex",
            inputs(),
            "from the length as for screws short of the far cortex");
  }

  private static List<String> inputs() {
    return List.of(
        "operations/fixation/screws/tipBeyondMm",
        "operations/fixation/screws/lengthMm",
        "operations/fixation/thicknessMm",
        "bone/sections");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return Plates.noPlate(scene);
    }
    List<ScrewTip> tips = ScrewTip.all(scene);
    boolean untold = scene.plates().stream().anyMatch(plate -> plate.plate().screws().isEmpty());
    if (untold && (tips.isEmpty() || what == What.TOO_SHORT)) {
      return Reading.unknown(asked(scene));
    }
    if (tips.isEmpty()) {
      return new Reading.None("no plate screw meant for both cortices");
    }
    return what == What.TOO_SHORT ? tooShort(scene, tips) : farthest(scene, tips, untold);
  }

  private static Reading tooShort(Scene scene, List<ScrewTip> tips) {
    List<Double> least = new ArrayList<>();
    List<Double> most = new ArrayList<>();
    for (HoleSide side : List.of(HoleSide.NEAR, HoleSide.FAR)) {
      least.add(count(tips, side, Certainty.YES));
      most.add(
          count(tips, side, Certainty.YES)
              + count(tips, side, Certainty.OPEN)
              + count(tips, HoleSide.UNSURE, Certainty.YES)
              + count(tips, HoleSide.UNSURE, Certainty.OPEN));
    }
    double min = Math.max(least.get(0), least.get(1));
    double max = Math.max(most.get(0), most.get(1));
    if (min == 0 && count(tips, HoleSide.UNSURE, Certainty.YES) > 0) {
      min = 1;
    }
    return new Reading.Amount(
        min, max, kind(tips), shown(tips), min < max ? List.of(asked(scene)) : List.of());
  }

  private static double count(List<ScrewTip> tips, HoleSide side, Certainty tooShort) {
    return tips.stream().filter(t -> t.side() == side && t.tooShort() == tooShort).count();
  }

  private static Reading farthest(Scene scene, List<ScrewTip> tips, boolean morePossible) {
    double min = LEAST;
    double max = morePossible ? MOST : LEAST;
    for (ScrewTip tip : tips) {
      min = Math.max(min, tip.beyond().map(Dimension::min).orElse(LEAST));
      max = Math.max(max, tip.beyond().map(Dimension::max).orElse(MOST));
    }
    return new Reading.Amount(
        Math.min(min, MOST),
        Math.min(max, MOST),
        kind(tips),
        shown(tips),
        min < max ? List.of(asked(scene)) : List.of());
  }

  /** A tip told from a length rests on how deep heads usually sit. */
  private static Kind kind(List<ScrewTip> tips) {
    return tips.stream().flatMap(tip -> tip.beyond().stream()).anyMatch(Dimension::assumed)
        ? Kind.ASSUMED
        : Kind.FACT;
  }

  private static String shown(List<ScrewTip> tips) {
    List<String> told =
        tips.stream()
            .flatMap(tip -> tip.beyond().stream())
            .map(mm -> mm.numbers() + " mm")
            .toList();
    int untold = tips.size() - told.size();
    String recorded =
        told.isEmpty() ? "no tip recorded" : "tips beyond: " + String.join(", ", told);
    return untold == 0 || told.isEmpty() ? recorded : recorded + "; " + untold + " not recorded";
  }

  private static MissingFact asked(Scene scene) {
    String plate = scene.plates().get(0).plate().id();
    return scene.missing(
        "fixation/" + plate + "/screws/tipBeyondMm",
        "How far does the tip of each screw stand beyond the far cortex, in mm?");
  }
}
