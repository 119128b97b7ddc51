package org.bonewright.mechanics.frame;

/**
 * Three directions at right angles: along a part, away from the bone, and across.
 *
 * @param along first direction, length 1
 * @param away second direction, length 1, at right angles to the first
 * @param across third direction; makes a right-handed frame
 */
public record Axes(Vector along, Vector away, Vector across) {

  /** The directions of space themselves. */
  public static final Axes SPACE =
      new Axes(new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1));

  /**
   * Return axes along one direction, with the second as near to another as a right angle allows.
   *
   * @throws ArithmeticException if both directions are the same
   */
  public static Axes of(Vector along, Vector near) {
    Vector first = along.unit();
    Vector second = near.minus(first.times(near.dot(first))).unit();
    return new Axes(first, second, first.cross(second));
  }

  /** Return the vector with these parts along the three directions. */
  Vector combine(double first, double second, double third) {
    return new Vector(
        first * along.x() + second * away.x() + third * across.x(),
        first * along.y() + second * away.y() + third * across.y(),
        first * along.z() + second * away.z() + third * across.z());
  }

  /** Return the three directions one after another: nine numbers. */
  double[] rows() {
    return new double[] {
      along.x(), along.y(), along.z(),
      away.x(), away.y(), away.z(),
      across.x(), across.y(), across.z()
    };
  }
}
