package org.bonewright.mechanics.frame;

/**
 * Two nodes tied at one point. What counts is how the part of the second node that would reach the
 * point moves against the part of the first node that would reach it, both taken as rigid arms. A
 * beam is such a link at its far end (see {@link Beams}); so are a spring and a joint.
 *
 * @param first index of the first node
 * @param second index of the second node
 * @param at the point, in mm
 * @param axes the directions in which the stiffness is written
 * @param stiffness 6 × 6: force in N and moment in N·mm on the second side for a relative movement
 *     in mm and rad; along, away, across, then turns about the same
 */
public record Link(int first, int second, Vector at, Axes axes, SixSquare stiffness) {

  /** How many movements a node has. */
  static final int SIX = SixSquare.SIZE;

  /**
   * Return a link of independent springs.
   *
   * @param springs stiffness along, away, across in N/mm, and about the same in N·mm/rad
   */
  public static Link springs(int first, int second, Vector at, Axes axes, Six springs) {
    return new Link(first, second, at, axes, SixSquare.diagonal(springs));
  }

  /**
   * Return how the relative movement in the axes of the link follows from the movement of a node:
   * six rows, six columns.
   */
  double[][] reach(Vector node) {
    Vector arm = at.minus(node);
    double[][] reach = new double[SIX][SIX];
    for (int i = 0; i < 3; i++) {
      Vector direction = axes.direction(i);
      Vector turn = arm.cross(direction); // direction . (turn x arm) = turn . (arm x direction)
      put(reach[i], 0, direction);
      put(reach[i], 3, turn);
      put(reach[i + 3], 3, direction);
    }
    return reach;
  }

  private static void put(double[] row, int from, Vector vector) {
    row[from] = vector.x();
    row[from + 1] = vector.y();
    row[from + 2] = vector.z();
  }
}
