package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.PlateSize;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Scene;

/**
 * Where the tip of a plate screw lies that is meant for both cortices.
 *
 * <p>As stated; else screw length less the way through plate, gap and bone: {@code L − (t + s + D)
 * / cos(tilt)}, with L measured over the head, t the thickness of the plate, s its distance from
 * the bone (none where not stated), D the outer diameter at the screw, half a millimetre either way
 * for how deep the head sits. Only where the bone was measured on both sides of the screw: a table
 * value cannot tell a millimetre.
 *
 * @param side the side of the zone
 * @param beyond mm beyond the far cortex, below zero where it falls short; empty where not recorded
 */
record ScrewTip(HoleSide side, Optional<Dimension> beyond) {

  private static final double SEAT = 0.5;
  private static final Dimension NONE = new Dimension(0, 0, false, "");

  /** Return the screws of every plate in place, those meant for a single cortex left out. */
  static List<ScrewTip> all(Scene scene) {
    List<ScrewTip> tips = new ArrayList<>();
    for (PlacedPlate plate : scene.plates()) {
      for (int hole : plate.allHoles().toArray()) {
        plate
            .screwIn(hole)
            .filter(row -> !ScrewCortices.meantForOne(row))
            .ifPresent(
                row -> tips.add(new ScrewTip(plate.side(hole), beyond(scene, plate, hole, row))));
      }
    }
    return tips;
  }

  private static Optional<Dimension> beyond(
      Scene scene, PlacedPlate plate, int hole, ScrewRow row) {
    if (row.tipBeyondMm().isPresent()) {
      return Optional.of(Dimension.stated(row.tipBeyondMm().get(), "as stated"));
    }
    Optional<Dimension> outer =
        plate
            .level(hole)
            .map(level -> ScrewLevel.outerAt(scene, level))
            .filter(width -> !width.assumed());
    Optional<Dimension> thickness = thickness(plate);
    if (row.lengthMm().isEmpty() || outer.isEmpty() || thickness.isEmpty()) {
      return Optional.empty();
    }
    Dimension standOff =
        plate.plate().standOffMm().map(s -> new Dimension(0, s.max(), false, "")).orElse(NONE);
    Dimension across = outer.get().plus(thickness.get()).plus(standOff);
    Quantity tilt = row.tiltDeg().orElse(new Quantity(0, 0));
    Quantity length = row.lengthMm().get();
    return Optional.of(
        Dimension.assumed(
            length.min() - across.max() / leastCosine(tilt) - SEAT,
            length.max() - across.min() / mostCosine(tilt) + SEAT,
            "from its length"));
  }

  private static Optional<Dimension> thickness(PlacedPlate plate) {
    return plate
        .plate()
        .thicknessMm()
        .map(stated -> Dimension.stated(stated, "plate thickness stated"))
        .or(
            () ->
                plate
                    .size()
                    .map(PlateSize::thickness)
                    .map(usual -> Dimension.assumed(usual, usual, "usual plate thickness")));
  }

  private static double leastCosine(Quantity tilt) {
    return Math.min(cosine(tilt.min()), cosine(tilt.max()));
  }

  private static double mostCosine(Quantity tilt) {
    boolean throughZero = tilt.min() <= 0 && tilt.max() >= 0;
    return throughZero ? 1 : Math.max(cosine(tilt.min()), cosine(tilt.max()));
  }

  private static double cosine(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  /** Return whether it falls short of the far cortex; open where it is not recorded. */
  Certainty tooShort() {
    return beyond.map(mm -> Certainty.of(mm.max() < 0, mm.min() < 0)).orElse(Certainty.OPEN);
  }
}
