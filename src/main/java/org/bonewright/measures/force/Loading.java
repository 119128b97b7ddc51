package org.bonewright.measures.force;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.load.LoadRange;
import org.bonewright.mechanics.construct.Load;

/**
 * A load on the bone at the line, as a range.
 *
 * @param pressing N along the bone
 * @param bending N·m
 * @param torsion N·m, either way round
 * @param tension direction around the bone of the side that it puts under tension, in degrees;
 *     empty for any
 * @param spread how far off that direction it may be, in degrees
 */
record Loading(
    Dimension pressing,
    Dimension bending,
    Dimension torsion,
    Optional<Double> tension,
    double spread) {

  /** Return the loading of an activity. */
  static Loading of(LoadRange load) {
    return new Loading(
        load.pressN(),
        load.bendingNm(),
        load.torsionNm(),
        load.tensionDeg(),
        load.tensionSpreadDeg());
  }

  private static final double PER_NEWTON_METRE = 1000;
  private static final double HALF_TURN = 180;

  /**
   * Return the load under a set of assumptions, about the first plate.
   *
   * @param facing direction around the bone of the side on which the first plate lies; empty where
   *     that is not told
   */
  Load under(Draw draw, Optional<Double> facing) {
    double side = Math.toRadians(side(draw, facing));
    double bend = draw.in(bending, Assumption.LOAD) * PER_NEWTON_METRE;
    double twist = draw.in(torsion, Assumption.LOAD) * PER_NEWTON_METRE;
    return new Load(
        -draw.in(pressing, Assumption.LOAD),
        0,
        0,
        bend * Math.sin(side),
        -bend * Math.cos(side),
        draw.place(Assumption.TWIST) < 0.5 ? -twist : twist);
  }

  /**
   * Degrees from the first plate to the side under tension; in the middle of any side, opposite.
   */
  private double side(Draw draw, Optional<Double> facing) {
    double off = 2 * draw.place(Assumption.SIDE) - 1;
    if (tension.isEmpty() || facing.isEmpty()) {
      return HALF_TURN + off * HALF_TURN;
    }
    return tension.get() - facing.get() + off * spread;
  }
}
