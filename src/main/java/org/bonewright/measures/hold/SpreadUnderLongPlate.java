package org.bonewright.measures.hold;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Scene;

/**
 * Whether a long plate with spread screws holds the bone: a plate with at least five holes on
 * either side of the zone, the outermost screw of each side at least three holes away from the
 * innermost. (Five to six holes a side are usual for the femur, from memory; what counts as spread
 * is our convention.)
 */
final class SpreadUnderLongPlate {

  private static final int HOLES = 5;
  private static final int APART = 3;

  private SpreadUnderLongPlate() {}

  /** Return whether some plate is such; nothing where holes, screws or sides are not all known. */
  static Optional<Boolean> of(Scene scene) {
    boolean open = false;
    for (PlacedPlate plate : scene.plates()) {
      if (!told(plate)) {
        open = true;
      } else if (longAndSpread(plate, HoleSide.NEAR) && longAndSpread(plate, HoleSide.FAR)) {
        return Optional.of(true);
      }
    }
    return open || scene.plates().isEmpty() ? Optional.empty() : Optional.of(false);
  }

  private static boolean told(PlacedPlate plate) {
    return plate.plate().holes().isPresent()
        && plate.plate().screws().isPresent()
        && plate.allHoles().noneMatch(hole -> plate.side(hole) == HoleSide.UNSURE);
  }

  private static boolean longAndSpread(PlacedPlate plate, HoleSide side) {
    List<Integer> filled =
        plate.holes(side).stream().filter(hole -> plate.screwIn(hole).isPresent()).toList();
    return plate.holes(side).size() >= HOLES
        && !filled.isEmpty()
        && filled.get(filled.size() - 1) - filled.get(0) >= APART;
  }
}
