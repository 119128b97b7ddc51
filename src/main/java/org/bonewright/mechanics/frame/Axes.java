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

  /** Return one of the three directions, counted from 0. */
  Vector direction(int index) {
    return switch (index) {
      case 0 -> along;
      case 1 -> away;
      case 2 -> across;
      default -> throw new IllegalArgumentException("no direction " + index);
    };
  }
}
