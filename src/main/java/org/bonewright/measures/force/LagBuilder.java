package org.bonewright.measures.force;

import org.bonewright.bone.ThreadForm;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.LaggedScrew.Place;
import org.bonewright.mechanics.hold.PullOut;
import org.bonewright.mechanics.section.HollowCircle;

/**
 * Builds lag screws in numbers under one set of assumptions. Between head and thread lies as much
 * as the bone is wide, half of it on either side of the line (our convention). A screw is never
 * tightened with more than 0.6 of the pull at which its thread strips in one cortex. The head is
 * 1.75 times as wide as the thread (from memory).
 */
final class LagBuilder {

  private static final double SHARE = 0.6;
  private static final double HEAD = 1.75 / 2;

  private final Draw draw;
  private final HollowCircle tube;
  private final CorticalBone bone;

  LagBuilder(Draw draw, HollowCircle tube, CorticalBone bone) {
    this.draw = draw;
    this.tube = tube;
    this.bone = bone;
  }

  /** Return a screw. */
  LaggedScrew screw(LagSketch sketch, Metal metal) {
    ThreadForm thread =
        ThreadForm.of(ScrewRow.Type.CORTICAL, draw.in(sketch.diameter(), Assumption.PLATE));
    double holds =
        new PullOut(thread.major(), thread.core(), thread.pitch())
            .capacity(bone.shearStrength(), tube.wall());
    double tilt = Math.toRadians(90 - draw.in(sketch.angle(), Assumption.LAG));
    double out = tube.outer() / 2 * draw.in(sketch.crossing(), Assumption.LAG);
    double along = Math.max(FromLine.EDGE, tube.outer() / 2 * Math.cos(tilt));
    double aside = tube.outer() / 2 * Math.sin(tilt);
    return new LaggedScrew(
        sketch.azimuth(),
        new Place(-along, out + aside),
        new Place(along, out - aside),
        metal.elastic(draw),
        thread.core(),
        thread.major(),
        thread.pitch(),
        Math.min(draw.in(sketch.force(), Assumption.COMPRESSION), SHARE * holds),
        HEAD * thread.major());
  }
}
