package org.bonewright.measures.hold;

import java.util.function.BiFunction;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Whether plate screws find more than the bone to hold in, on both sides of the zone: a strut that
 * they cross, or cement around them.
 */
final class AnchoredBeside {

  /** Cement must not come into the line; from memory. */
  private static final double CEMENT_CLEAR_MM = 10;

  private final Scene scene;

  AnchoredBeside(Scene scene) {
    this.scene = scene;
  }

  /** Return whether a screw on either side of the zone passes through the wall of a strut. */
  Certainty strut() {
    StrutWalls walls = new StrutWalls(scene);
    return onBothSides(
        (plate, hole) -> {
          Dimension crossed = walls.crossedBy(plate, hole);
          return Certainty.of(crossed.min() > 0, crossed.max() > 0);
        });
  }

  /** Return whether cemented screws hold either side, 10 mm off the zone, without infection. */
  Certainty cement() {
    return onBothSides(this::cemented).and(aseptic());
  }

  private Certainty cemented(PlacedPlate plate, int hole) {
    boolean cement =
        plate
            .screwIn(hole)
            .flatMap(ScrewRow::augmentation)
            .map(added -> added == ScrewRow.Augmentation.CEMENT)
            .orElse(false);
    if (!cement) {
      return Certainty.NO;
    }
    return ScrewLevel.clearOfZone(scene, plate, hole)
        .map(clear -> Certainty.of(clear.min() >= CEMENT_CLEAR_MM, clear.max() >= CEMENT_CLEAR_MM))
        .orElse(Certainty.OPEN);
  }

  private Certainty aseptic() {
    return scene.read("confirmatory-signs") instanceof Reading.Amount signs
        ? Certainty.of(signs.max() == 0, signs.min() == 0)
        : Certainty.OPEN;
  }

  private Certainty onBothSides(BiFunction<PlacedPlate, Integer, Certainty> anchored) {
    return onSide(HoleSide.NEAR, anchored).and(onSide(HoleSide.FAR, anchored));
  }

  private Certainty onSide(HoleSide side, BiFunction<PlacedPlate, Integer, Certainty> anchored) {
    Certainty any = Certainty.NO;
    for (PlacedPlate plate : scene.plates()) {
      if (plate.plate().screws().isEmpty()) {
        any = any.or(Certainty.OPEN);
      }
      for (int hole : plate.allHoles().filter(h -> plate.screwIn(h).isPresent()).toArray()) {
        HoleSide here = plate.side(hole);
        if (here == side) {
          any = any.or(anchored.apply(plate, hole));
        } else if (here == HoleSide.UNSURE && anchored.apply(plate, hole) != Certainty.NO) {
          any = any.or(Certainty.OPEN);
        }
      }
    }
    return any;
  }
}
