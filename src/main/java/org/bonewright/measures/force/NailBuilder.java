package org.bonewright.measures.force;

import org.bonewright.bone.Dimension;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.section.HollowCircle;

/** Builds the nail of a sketch in numbers under one set of assumptions. */
final class NailBuilder {

  /** A bolt needs some length between nail and cortex: share of the bone's mean radius. */
  private static final double THICKEST = 0.9;

  private final NailSketch sketch;
  private final Draw draw;
  private final HollowCircle tube;
  private final double gap;

  /**
   * Prepare to build.
   *
   * @param tube the bone
   * @param gap between the fragments in mm
   */
  NailBuilder(NailSketch sketch, Draw draw, HollowCircle tube, double gap) {
    this.sketch = sketch;
    this.draw = draw;
    this.tube = tube;
    this.gap = gap;
  }

  /**
   * Return the nail.
   *
   * @param snug whether it already touches its canal, all slack taken up
   */
  MetalNail nail(boolean snug) {
    double outer =
        Math.min(draw.in(sketch.outer(), Assumption.PLATE), 2 * THICKEST * tube.middleRadius());
    return new MetalNail(
        sketch.metal().elastic(draw),
        new HollowCircle(outer, outer * draw.in(sketch.bore(), Assumption.PLATE)),
        sketch.bolts().stream().filter(this::inBone).map(this::bolt).toList(),
        sketch.rests().stream().map(rest -> rest(rest, snug, outer)).toList());
  }

  private boolean inBone(NailSketch.Bolt bolt) {
    return Math.abs(draw.in(bolt.at(), Assumption.PLACE)) > gap / 2;
  }

  private MetalNail.Bolt bolt(NailSketch.Bolt bolt) {
    return new MetalNail.Bolt(
        FromLine.kept(draw.in(bolt.at(), Assumption.PLACE), gap),
        bolt.azimuth(),
        sketch.metal().elastic(draw),
        draw.in(bolt.diameter(), Assumption.PLATE),
        false,
        false,
        bolt.slides());
  }

  private MetalNail.Rest rest(NailSketch.Rest rest, boolean snug, double outer) {
    double canal = draw.in(rest.canal(), Assumption.CANAL);
    return new MetalNail.Rest(
        FromLine.kept(draw.in(rest.at(), Assumption.PLACE), gap),
        snug ? 0 : Math.max(0, canal - outer) / 2);
  }

  /** Return how far it reaches from the line at the most, in mm. */
  static double reach(NailSketch nail) {
    return nail.bolts().stream()
        .map(NailSketch.Bolt::at)
        .map(Dimension::magnitude)
        .mapToDouble(Dimension::max)
        .max()
        .orElse(0);
  }
}
