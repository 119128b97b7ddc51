package org.bonewright.casefile.checking;

import org.bonewright.casefile.Quantity;

/**
 * How long a bone of an adult may be, in mm.
 *
 * <p>The constants hold the usual range of both sexes: the extremes of series seen as abstracts,
 * where these give a mean only, ± 10 %; the fibula as the tibia. A slip of the pen is suspected
 * only a fifth beyond it.
 */
enum AdultLength {
  HUMERUS(270, 350),
  FEMUR(377, 493),
  TIBIA(320, 405),
  FIBULA(320, 405),
  RADIUS(205, 265),
  ULNA(222, 285),
  CLAVICLE(128, 170);

  private static final double WIDENED_BY = 0.2;

  private final double usualMin;
  private final double usualMax;

  AdultLength(double usualMin, double usualMax) {
    this.usualMin = usualMin;
    this.usualMax = usualMax;
  }

  /** Return the length of the bone that a constant of another enum names. */
  static AdultLength of(Enum<?> bone) {
    return valueOf(bone.name());
  }

  /** Return the range in which a length is believed without question. */
  Quantity believed() {
    return new Quantity(usualMin * (1 - WIDENED_BY), usualMax * (1 + WIDENED_BY));
  }
}
