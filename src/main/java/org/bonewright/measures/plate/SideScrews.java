package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;

/**
 * The holes of a plate that hold a plate screw, by the fragment they hold, in order.
 *
 * @param near in the fragment towards the landmark
 * @param far in the other
 */
record SideScrews(List<Integer> near, List<Integer> far) {

  /** Return them, where it is told which screws there are and on which side each is. */
  static Optional<SideScrews> of(PlacedPlate placed) {
    boolean told =
        placed.plate().screws().isPresent()
            && placed
                .allHoles()
                .filter(hole -> placed.screwIn(hole).isPresent())
                .noneMatch(hole -> placed.side(hole) == HoleSide.UNSURE);
    return told
        ? Optional.of(new SideScrews(on(placed, HoleSide.NEAR), on(placed, HoleSide.FAR)))
        : Optional.empty();
  }

  private static List<Integer> on(PlacedPlate placed, HoleSide side) {
    return placed.holes(side).stream().filter(hole -> placed.screwIn(hole).isPresent()).toList();
  }
}
