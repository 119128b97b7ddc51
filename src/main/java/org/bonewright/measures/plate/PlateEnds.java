package org.bonewright.measures.plate;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Placement;
import org.bonewright.measures.Scene;

/**
 * Where a plate begins and ends along the bone, in mm: hole 1 and the last hole, each with the
 * metal beyond it.
 *
 * @param near its end towards the landmark
 * @param far its other end
 */
record PlateEnds(Dimension near, Dimension far) {

  /** Return the ends measured from the middle of the zone, where they can be told. */
  static Optional<PlateEnds> fromZone(PlacedPlate placed) {
    return placed
        .plate()
        .holes()
        .flatMap(
            last ->
                placed
                    .distance(1)
                    .flatMap(
                        first ->
                            placed
                                .distance(last)
                                .flatMap(end -> around(placed, first, end, last))));
  }

  /** Return the ends as levels of the bone, where they can be told. */
  static Optional<PlateEnds> levels(Scene scene, PlacedPlate placed) {
    return measured(placed)
        .or(
            () ->
                scene
                    .zone()
                    .centre()
                    .flatMap(
                        centre ->
                            fromZone(placed)
                                .map(
                                    ends ->
                                        new PlateEnds(
                                            ends.near.plus(centre), ends.far.plus(centre)))));
  }

  private static Optional<PlateEnds> measured(PlacedPlate placed) {
    Optional<Dimension> first =
        placed
            .plate()
            .place()
            .flatMap(Placement::firstHoleMm)
            .map(level -> Dimension.stated(level, "first hole stated"));
    return first.flatMap(
        one ->
            placed
                .plate()
                .holes()
                .flatMap(
                    last ->
                        placed
                            .spacing()
                            .flatMap(
                                step ->
                                    around(placed, one, one.plus(times(step, last - 1)), last))));
  }

  private static Optional<PlateEnds> around(
      PlacedPlate placed, Dimension first, Dimension last, int holes) {
    return beyondLastHole(placed, holes)
        .map(offset -> new PlateEnds(first.minus(offset), last.plus(offset)));
  }

  /** Half of what the length leaves beside the holes. */
  private static Optional<Dimension> beyondLastHole(PlacedPlate placed, int holes) {
    return placed
        .length()
        .flatMap(
            length ->
                placed
                    .spacing()
                    .map(
                        step -> {
                          Dimension left = length.minus(times(step, holes - 1));
                          return new Dimension(
                              Math.max(0, left.min()) / 2,
                              Math.max(0, left.max()) / 2,
                              left.assumed(),
                              "end of the plate");
                        }));
  }

  private static Dimension times(Dimension step, int by) {
    return new Dimension(step.min() * by, step.max() * by, step.assumed(), step.basis());
  }
}
