package org.bonewright.measures.plate;

import java.util.Optional;
import java.util.function.IntFunction;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;

/**
 * Where a plate begins and ends along the bone, in mm: hole 1 and the last hole, each with the
 * metal beyond it.
 *
 * @param near its end towards the landmark
 * @param far its other end
 */
public record PlateEnds(Dimension near, Dimension far) {

  /** Return the ends measured from the middle of the zone, where they can be told. */
  static Optional<PlateEnds> fromZone(PlacedPlate placed) {
    return between(placed, placed::distance);
  }

  /** Return the ends as levels of the bone, where they can be told. */
  public static Optional<PlateEnds> levels(PlacedPlate placed) {
    return between(placed, placed::level);
  }

  private static Optional<PlateEnds> between(
      PlacedPlate placed, IntFunction<Optional<Dimension>> hole) {
    return placed
        .plate()
        .holes()
        .flatMap(
            last ->
                hole.apply(1)
                    .flatMap(
                        first ->
                            hole.apply(last).flatMap(end -> around(placed, first, end, last))));
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
