package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * Builds the fixator of a sketch in numbers under one set of assumptions. From memory: bars from
 * aluminium or carbon to steel; the core of the thread of a pin 0.7 to 0.85 of its diameter; a
 * second bar 15 to 40 mm beyond the first.
 */
final class FixatorBuilder {

  private static final Dimension BAR_YOUNG = Dimension.assumed(60_000, 193_000, "bar not told");
  private static final Dimension CORE = Dimension.assumed(0.7, 0.85, "usual pin");
  private static final Dimension APART = Dimension.assumed(15, 40, "usual distance of bars");
  private static final double POISSON = 0.3;

  private final FixatorSketch sketch;
  private final Draw draw;
  private final double gap;

  /**
   * Prepare to build.
   *
   * @param gap between the fragments in mm
   */
  FixatorBuilder(FixatorSketch sketch, Draw draw, double gap) {
    this.sketch = sketch;
    this.draw = draw;
    this.gap = gap;
  }

  /** Return the fixator. */
  BarFixator fixator() {
    Material material = Material.isotropic(draw.in(BAR_YOUNG, Assumption.PINS), POISSON);
    HollowCircle rod = HollowCircle.solid(draw.in(sketch.barDiameter(), Assumption.PINS));
    List<BarFixator.Bar> bars = new ArrayList<>();
    for (int bar = 0; bar < sketch.bars(); bar++) {
      double from = draw.in(sketch.distance(), Assumption.FRAME);
      bars.add(new BarFixator.Bar(material, rod, from + bar * draw.in(APART, Assumption.FRAME)));
    }
    List<BarFixator.Pin> pins =
        sketch.pins().stream()
            .filter(pin -> Math.abs(draw.in(pin.at(), Assumption.PLACE)) > gap / 2)
            .map(this::pin)
            .toList();
    return new BarFixator(sketch.azimuth(), bars, pins);
  }

  private BarFixator.Pin pin(FixatorSketch.Pin pin) {
    double diameter = draw.in(pin.diameter(), Assumption.PINS);
    return new BarFixator.Pin(
        FromLine.kept(draw.in(pin.at(), Assumption.PLACE), gap),
        sketch.pinMetal().elastic(draw),
        diameter,
        diameter * draw.in(CORE, Assumption.PINS),
        false);
  }
}
