package org.bonewright.measures.plate;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Scene;

/**
 * How far a plate lies over each main fragment, from the edge of the zone to its end, in mm; below
 * zero it is taken as zero.
 *
 * @param near over the fragment towards the landmark
 * @param far over the other
 * @param zone length of the zone between them
 */
record PlateReach(Dimension near, Dimension far, Dimension zone) {

  /** Return the reach of a plate, where the ends of plate and zone can be told. */
  static Optional<PlateReach> of(Scene scene, PlacedPlate placed) {
    return PlateEnds.fromZone(placed)
        .flatMap(
            ends ->
                scene
                    .zone()
                    .length()
                    .map(
                        zone ->
                            new PlateReach(
                                beyond(negative(ends.near()), zone),
                                beyond(ends.far(), zone),
                                zone)));
  }

  /** Return the reach over one fragment. */
  Dimension on(HoleSide side) {
    return side == HoleSide.NEAR ? near : far;
  }

  /** Return the shorter reach: at most half of what the plate is longer than the zone. */
  Dimension shorter(Dimension plateLength) {
    double half = Math.max(0, plateLength.max() - zone.min()) / 2;
    double max = Math.min(half, Math.min(near.max(), far.max()));
    return new Dimension(
        Math.min(max, Math.min(near.min(), far.min())),
        max,
        near.assumed() || far.assumed() || plateLength.assumed(),
        "");
  }

  private static Dimension beyond(Dimension end, Dimension zone) {
    return new Dimension(
        Math.max(0, end.min() - zone.max() / 2),
        Math.max(0, end.max() - zone.min() / 2),
        end.assumed() || zone.assumed(),
        "");
  }

  private static Dimension negative(Dimension d) {
    return new Dimension(-d.max(), -d.min(), d.assumed(), d.basis());
  }
}
