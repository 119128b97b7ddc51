package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;

/**
 * How a patch stands: what it has lost, and the forces that went on acting when it lost them.
 *
 * @param patch what it can bear
 * @param tilted whether it resists no further tilting
 * @param slid whether it resists no further slipping
 * @param lifted whether the plate has left the bone there
 * @param kept forces that stay as they were: away from the bone, along it, across, and about the
 *     same, as the patch resists them
 */
record PatchStand(Patch patch, boolean tilted, boolean slid, boolean lifted, Six kept)
    implements Stand {

  /** Return a patch that has lost nothing. */
  static PatchStand whole(Patch patch) {
    return new PatchStand(patch, false, false, false, Six.NONE);
  }

  /** Return what it has lost last. */
  Change state() {
    if (lifted) {
      return Change.LIFTED;
    }
    if (slid) {
      return Change.SLIP;
    }
    return tilted ? Change.TILT : Change.STICK;
  }

  @Override
  public boolean settled() {
    return lifted;
  }

  @Override
  public double excess(Change change, Six carried, Six moved) {
    return patch.excess(change, this, carried);
  }

  @Override
  public Stand after(Change change, Six carried, Six moved) {
    return switch (change) {
      case TILT -> afterTilt(carried);
      case SLIP -> afterSlip(carried);
      case LIFTED -> afterLift(carried);
      case STICK, PULLED, TOUCHES, LOOSENS -> this;
    };
  }

  @Override
  public boolean resists(int movement) {
    return switch (movement) {
      case 0 -> !lifted;
      case 1, 2, 3 -> !slid;
      default -> !tilted;
    };
  }

  /** Return it after it has reached its tilting moment while it carried these forces. */
  private PatchStand afterTilt(Six carried) {
    Six tilting = new Six(0, 0, 0, 0, carried.aboutAway(), carried.aboutAcross());
    return new PatchStand(patch, true, slid, false, kept.plus(tilting));
  }

  /** Return it after it has slipped while it carried these forces. */
  private PatchStand afterSlip(Six carried) {
    Six rubbing = new Six(0, carried.away(), carried.across(), carried.aboutAlong(), 0, 0);
    return new PatchStand(patch, tilted, true, false, kept.plus(rubbing));
  }

  /**
   * Return it after the plate has left the bone: it resists nothing more. What it was pressed by
   * has gone over into pull on the screw and stays so.
   */
  private PatchStand afterLift(Six carried) {
    Six pull = new Six(kept.along() + carried.along(), 0, 0, 0, 0, 0);
    return new PatchStand(patch, true, true, true, pull);
  }
}
