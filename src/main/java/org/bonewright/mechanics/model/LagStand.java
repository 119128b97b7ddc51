package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;

/**
 * How the head of a lag screw stands on the bone: pulled onto it until the ends are pressed
 * together so much further that nothing pulls any more, then loose. It stays loose while a load is
 * raised.
 *
 * @param force with which it was tightened, in N
 * @param loose whether it is loose
 * @param kept the pull that it would have if nothing had moved since
 */
record LagStand(double force, boolean loose, Six kept) implements Stand {

  /** A screw that was not tightened comes loose under no more than this, N. */
  private static final double LEAST = 1;

  /**
   * Return a screw that is tight.
   *
   * @param force with which it was tightened, in N
   * @param pull it would have if nothing moved, in N
   */
  static LagStand tight(double force, double pull) {
    return new LagStand(force, false, new Six(pull, 0, 0, 0, 0, 0));
  }

  @Override
  public boolean resists(int movement) {
    return !loose;
  }

  @Override
  public boolean settled() {
    return loose;
  }

  @Override
  public double excess(Change change, Six carried, Six moved) {
    return change == Change.LOOSENS && !loose
        ? -(kept.along() + carried.along()) / Math.max(force, LEAST)
        : Double.NEGATIVE_INFINITY;
  }

  @Override
  public Stand after(Change change, Six carried, Six moved) {
    return new LagStand(force, true, Six.NONE);
  }
}
