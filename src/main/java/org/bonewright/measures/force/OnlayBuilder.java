package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.mechanics.construct.OnlayStrut;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/**
 * Builds a strut on the surface of the bone in numbers under one set of assumptions. A screw passes
 * through it where its tip stands out by the thickness of the strut (our convention).
 */
final class OnlayBuilder {

  private final OnlaySketch sketch;
  private final Draw draw;
  private final double gap;
  private final double wall;

  /**
   * Prepare to build.
   *
   * @param gap between the fragments in mm
   */
  OnlayBuilder(OnlaySketch sketch, Draw draw, double gap) {
    this.sketch = sketch;
    this.draw = draw;
    this.gap = gap;
    this.wall = draw.in(sketch.wall(), Assumption.CORTEX);
  }

  /** Return whether a screw is too short to pass through it. */
  boolean isMissedBy(PlateSketch.Screw screw) {
    return draw.in(screw.tip(), Assumption.CORTEX) < wall;
  }

  /**
   * Return the strut.
   *
   * @param material of bone
   * @param missed levels of screws that are too short for it
   */
  OnlayStrut strut(Material material, List<Double> missed) {
    List<Double> wires = new ArrayList<>();
    sketch.wires().forEach(wire -> wires.add(FromLine.kept(draw.in(wire, Assumption.PLACE), gap)));
    return new OnlayStrut(
        material,
        new Rectangle(draw.in(sketch.width(), Assumption.WIDTH), wall),
        sketch.azimuth(),
        draw.in(sketch.from(), Assumption.PLACE),
        draw.in(sketch.to(), Assumption.PLACE),
        wires,
        missed);
  }
}
