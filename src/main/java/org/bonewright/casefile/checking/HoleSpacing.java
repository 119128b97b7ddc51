package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;

/**
 * The distance between neighbouring holes of a plate.
 *
 * @param mm the distance
 * @param stated whether the file states it; else it is that of the family, from memory, ± 10 %
 */
record HoleSpacing(Quantity mm, boolean stated) {

  private static final double SPREAD = 0.1;

  /** Return the spacing of a plate, if anything is known about it. */
  static Optional<HoleSpacing> of(Plate plate) {
    return plate
        .spacingMm()
        .map(mm -> new HoleSpacing(mm, true))
        .or(() -> plate.family().map(HoleSpacing::ofFamily));
  }

  private static HoleSpacing ofFamily(Plate.Family family) {
    double mm = family.spacingMm();
    return new HoleSpacing(new Quantity(mm * (1 - SPREAD), mm * (1 + SPREAD)), false);
  }

  /** Return the shortest distance that this many steps from hole to hole may take. */
  double atLeast(int steps) {
    return steps * mm.min();
  }

  /** Return the longest distance that this many steps from hole to hole may take. */
  double atMost(int steps) {
    return steps * mm.max();
  }
}
