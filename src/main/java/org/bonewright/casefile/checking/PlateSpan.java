package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Plate;

/**
 * The distance from the first to the last hole of a plate.
 *
 * @param atLeast the shortest that it may be, in mm
 * @param isStated whether it follows from what the file states, not from the plate's family
 */
record PlateSpan(double atLeast, boolean isStated) {

  /** No plate reaches farther than this beyond its last hole, in mm. */
  private static final double LONGEST_END = 20;

  /** Return the span of a plate, if its holes and their spacing, or its length, tell it. */
  static Optional<PlateSpan> of(Plate plate) {
    return byHoles(plate)
        .or(
            () ->
                plate
                    .lengthMm()
                    .map(mm -> new PlateSpan(Math.max(0, mm.min() - 2 * LONGEST_END), true)));
  }

  private static Optional<PlateSpan> byHoles(Plate plate) {
    return plate
        .holes()
        .flatMap(
            holes ->
                HoleSpacing.of(plate)
                    .map(spacing -> new PlateSpan(spacing.atLeast(holes - 1), spacing.stated())));
  }
}
