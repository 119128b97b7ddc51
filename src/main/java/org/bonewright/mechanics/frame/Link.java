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

  private static final int THREE = 3;

  /**
   * Return a link of independent springs.
   *
   * @param springs stiffness along, away, across in N/mm, and about the same in N·mm/rad
   */
  public static Link springs(int first, int second, Vector at, Axes axes, Six springs) {
    return new Link(first, second, at, axes, SixSquare.diagonal(springs));
  }

  /** Return the stiffness in the directions of space: 36 numbers, row by row. */
  double[] inSpace() {
    double[] turn = axes.rows();
    double[] half = new double[SixSquare.SIZE * SixSquare.SIZE];
    double[] space = new double[SixSquare.SIZE * SixSquare.SIZE];
    for (int row = 0; row < SixSquare.SIZE; row++) {
      for (int column = 0; column < SixSquare.SIZE; column++) {
        int three = column / THREE * THREE;
        double sum = 0;
        for (int k = 0; k < THREE; k++) {
          sum += stiffness.get(row, three + k) * turn[k * THREE + column - three];
        }
        half[row * SixSquare.SIZE + column] = sum;
      }
    }
    for (int row = 0; row < SixSquare.SIZE; row++) {
      int three = row / THREE * THREE;
      for (int column = 0; column < SixSquare.SIZE; column++) {
        double sum = 0;
        for (int k = 0; k < THREE; k++) {
          sum += turn[k * THREE + row - three] * half[(three + k) * SixSquare.SIZE + column];
        }
        space[row * SixSquare.SIZE + column] = sum;
      }
    }
    return space;
  }
}
