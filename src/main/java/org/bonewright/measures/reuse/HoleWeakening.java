package org.bonewright.measures.reuse;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.mechanics.hold.EmptyHole;

/**
 * How much torsional strength the widest open hole leaves, as a range: published tests disagree.
 * Spanned or not, since the curves are of a bone alone.
 */
final class HoleWeakening implements Measure {

  private static final double PERCENT = 100;

  @Override
  public Definition definition() {
    return new Definition(
        "hole-weakening",
        "Torsional strength beside open hole",
        Definition.percent(),
        "share of its torsional strength that the bone alone keeps beside its widest open hole"
            + " (open-hole-ratio-beyond, open-hole-ratio-spanned), by the lowest and the highest of"
            + " published curves: 77 to 100 % at a tenth of the diameter, 62 to 66 % at a fifth, 50 to"
            + " 55 % at three tenths, 22 % from six tenths on, straight lines between, in whole percent. An implant over"
            + " the hole and screws in it are left out. None where no hole is left open",
        List.of("open-holes-left", "open-hole-ratio-beyond", "open-hole-ratio-spanned"),
        "high: Edgerton et al., J Orthop Res 1990 (from memory); low: Ho 2010, pig femur, and"
            + " McChesney et al., Clin Biomech 2022, composite tibia (excerpts read), then our line");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.read("open-holes-left") instanceof Reading.Amount open && open.max() < 1) {
      return new Reading.None("no hole is left open");
    }
    Reading beyond = scene.read("open-hole-ratio-beyond");
    Reading spanned = scene.read("open-hole-ratio-spanned");
    if (!(beyond instanceof Reading.Amount one) || !(spanned instanceof Reading.Amount other)) {
      return new Reading.Unknown(Reading.missingOf(beyond, spanned).stream().distinct().toList());
    }
    double narrowest = Math.max(one.min(), other.min());
    double widest = Math.max(one.max(), other.max());
    return new Reading.Amount(
        Math.rint(PERCENT * EmptyHole.torsionLow(widest)),
        Math.rint(PERCENT * EmptyHole.torsionHigh(narrowest)),
        Kind.MODEL,
        "widest open hole beyond the implant " + one.shown() + ", spanned " + other.shown(),
        Reading.missingOf(beyond, spanned));
  }
}
