package org.bonewright.measures.nail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Diameters of a nail against the canal and the reamer. */
final class NailNumber implements Measure {

  /** What is measured. */
  enum What {
    /** The nail's diameter. */
    DIAMETER,
    /** Nail over canal at the isthmus. */
    FILL,
    /** Reamer minus nail. */
    REAMED_OVER
  }

  private final What what;

  NailNumber(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case DIAMETER ->
          new Definition(
              "nail-diameter",
              "Nail diameter",
              Definition.millimetres(),
              "as stated",
              List.of("operations/fixation/outerMm"),
              "the case file");
      case FILL ->
          new Definition(
              "nail-fill",
              "Canal fill",
              Definition.ratio(),
              "nail diameter divided by the diameter of the canal at the isthmus, or by the last"
                  + " reamer where that is wider",
              List.of("nail-diameter", "bone/sections", "operations/fixation/reamedMm"),
              "Millar et al., J Orthop Trauma 2018, for its meaning; using the reamer is our"
                  + " convention");
      case REAMED_OVER ->
          new Definition(
              "reamed-over-nail",
              "Reamed wider than the nail",
              Definition.signedMillimetres(),
              "last reamer minus nail diameter; none when not reamed",
              List.of("nail-diameter", "operations/fixation/reamedMm"),
              "common practice, no source");
    };
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Nail> nail = Nails.nail(scene);
    if (nail.isEmpty()) {
      return Nails.noNail(scene);
    }
    String path = "fixation/" + nail.get().id();
    MissingFact diameter =
        scene.missing(path + "/outerMm", "What is the diameter of " + nail.get().id() + ", in mm?");
    if (nail.get().outerMm().isEmpty()) {
      return Reading.unknown(diameter);
    }
    Dimension outer = Dimension.stated(nail.get().outerMm().get(), "stated");
    return switch (what) {
      case DIAMETER -> Reading.number(outer, "nail " + outer.numbers() + " mm", diameter);
      case FILL -> fill(scene, nail.get(), outer, diameter);
      case REAMED_OVER ->
          reamedOver(
              nail.get().reamedMm(),
              outer,
              diameter,
              scene.missing(path + "/reamedMm", "What was the last reamer, in mm (0: none)?"));
    };
  }

  private static Reading fill(Scene scene, Nail nail, Dimension outer, MissingFact diameter) {
    Dimension isthmus = scene.bone().isthmus();
    Dimension canal =
        nail.reamedMm()
            .map(reamer -> isthmus.atLeast(Dimension.stated(reamer, "last reamer")))
            .orElse(isthmus);
    MissingFact width =
        scene.missingInCase("bone/sections", "How wide is the canal at its narrowest part, in mm?");
    if (canal.min() <= 0) {
      return Reading.unknown(width);
    }
    Dimension fill = outer.over(canal);
    return Reading.number(
        fill,
        "nail "
            + outer.numbers()
            + " mm in a canal of "
            + canal.numbers()
            + " mm ("
            + canal.basis()
            + ")",
        open(canal, width, outer, diameter));
  }

  private static Reading reamedOver(
      Optional<Quantity> reamed, Dimension outer, MissingFact diameter, MissingFact reamer) {
    if (reamed.isEmpty()) {
      return Reading.unknown(reamer);
    }
    if (reamed.get().max() == 0) {
      return new Reading.None("not reamed");
    }
    Dimension last = Dimension.stated(reamed.get(), "");
    Dimension over = last.minus(outer);
    return Reading.number(
        over,
        "reamed to " + Numbers.shown(reamed.get()) + " mm for " + outer.numbers() + " mm",
        open(last, reamer, outer, diameter));
  }

  /** Return what would make the two dimensions exact, each only where it is a range. */
  private static MissingFact[] open(
      Dimension one, MissingFact askOne, Dimension two, MissingFact askTwo) {
    List<MissingFact> open = new ArrayList<>();
    if (one.min() < one.max()) {
      open.add(askOne);
    }
    if (two.min() < two.max()) {
      open.add(askTwo);
    }
    return open.toArray(MissingFact[]::new);
  }
}
