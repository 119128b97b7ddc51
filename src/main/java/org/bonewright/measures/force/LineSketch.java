package org.bonewright.measures.force;

import org.bonewright.bone.Dimension;

/**
 * The line between the fragments, as the model takes it: one even gap.
 *
 * @param closed whether the ends touch all round
 * @param gap width in mm between the fragments that carry; 0 where closed
 * @param strained the sum of the gaps that share the movement, in mm; less than {@code gap} where
 *     loose pieces lie in it
 * @param pressed how hard the ends are pressed together before any load, in N; 0 to 0 for nothing
 * @param central whether that force acts on the axis of the bone, as of a lag screw
 * @param towardsPlate else where it acts, as a share from the edge of the core of the section (0)
 *     to the outer surface under the plate (1)
 */
record LineSketch(
    boolean closed,
    Dimension gap,
    Dimension strained,
    Dimension pressed,
    boolean central,
    Dimension towardsPlate) {

  private static final Dimension NOTHING = new Dimension(0, 0, false, "");

  /** A line that has not united: nothing that bears lies in it, taken as 1 mm; our convention. */
  static final LineSketch NOT_UNITED =
      new LineSketch(
          false,
          Dimension.assumed(1, 1, "line not united"),
          Dimension.assumed(1, 1, "line not united"),
          NOTHING,
          false,
          NOTHING);
}
