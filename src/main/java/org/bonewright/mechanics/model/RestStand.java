package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;

/**
 * How a nail stands against the wall of its canal: free until it has moved sideways by the slack,
 * then held by the wall. It does not leave the wall again while a load is raised.
 *
 * @param slack in mm
 * @param touching whether it lies against the wall
 * @param kept what the springs of the wall would push while the slack was taken up, taken back
 * @param wall stiffness of the wall in N/mm
 */
record RestStand(double slack, boolean touching, Six kept, double wall) implements Stand {

  /** Return a nail in the middle of its canal; against the wall where there is no slack. */
  static RestStand of(double slack, double wall) {
    return new RestStand(slack, slack <= 0, Six.NONE, wall);
  }

  /** Return the springs of the wall: sideways only. */
  static Six springs(double wall) {
    return new Six(0, wall, wall, 0, 0, 0);
  }

  @Override
  public boolean resists(int movement) {
    return touching;
  }

  @Override
  public boolean settled() {
    return touching;
  }

  @Override
  public double excess(Change change, Six carried, Six moved) {
    return change == Change.TOUCHES && !touching
        ? Math.hypot(moved.away(), moved.across()) / slack - 1
        : Double.NEGATIVE_INFINITY;
  }

  @Override
  public Stand after(Change change, Six carried, Six moved) {
    Six taken = new Six(0, -wall * moved.away(), -wall * moved.across(), 0, 0, 0);
    return new RestStand(slack, true, taken, wall);
  }
}
