package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;

/**
 * How a patch stands: what it has lost, and the forces that went on acting when it lost them.
 *
 * @param tilted whether it resists no further tilting
 * @param slid whether it resists no further slipping
 * @param lifted whether the plate has left the bone there
 * @param kept forces that stay as they were: away from the bone, along it, across, and about the
 *     same, as the patch resists them
 */
record PatchStand(boolean tilted, boolean slid, boolean lifted, Six kept) {

  /** A patch that has lost nothing. */
  static final PatchStand WHOLE = new PatchStand(false, false, false, Six.NONE);

  /** Return whether it still resists one of the six movements, counted from 0. */
  boolean resists(int movement) {
    return switch (movement) {
      case 0 -> !lifted;
      case 1, 2, 3 -> !slid;
      default -> !tilted;
    };
  }

  /** Return it after it has reached its tilting moment while it carried these forces. */
  PatchStand afterTilt(Six carried) {
    Six tilting = new Six(0, 0, 0, 0, carried.aboutAway(), carried.aboutAcross());
    return new PatchStand(true, slid, false, kept.plus(tilting));
  }

  /** Return it after it has slipped while it carried these forces. */
  PatchStand afterSlip(Six carried) {
    Six rubbing = new Six(0, carried.away(), carried.across(), carried.aboutAlong(), 0, 0);
    return new PatchStand(tilted, true, false, kept.plus(rubbing));
  }

  /**
   * Return it after the plate has left the bone: it resists nothing more. What it was pressed by
   * has gone over into pull on the screw and stays so.
   */
  PatchStand afterLift(Six carried) {
    Six pull = new Six(kept.along() + carried.along(), 0, 0, 0, 0, 0);
    return new PatchStand(true, true, true, pull);
  }
}
