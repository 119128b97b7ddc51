package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.casefile.OneOrMany;

/** An external fixator on one side of the bone. */
record BenchFixator(
    @Meaning("degrees around the bone of the side of its bars") Optional<Double> azimuth,
    @Meaning("one or two") @OneOrMany List<Bar> bars,
    @OneOrMany List<Pins> pins) {

  /** A bar along the bone, clamped to every pin. */
  record Bar(
      @Named("E") @Between(min = 0.001, max = 1e7) double young,
      @Named("nu") @Between(min = 0, max = 0.499) double poisson,
      @Between(min = 0.1, max = 100) double outerDiameter,
      @Between(min = 0, max = 100) double innerDiameter,
      @Meaning("from the surface of the bone to the axis of the bar") @Between(min = 0.1, max = 500)
          double distance) {}

  /** Pins of one kind, through both cortices. */
  record Pins(
      List<Double> at,
      @Named("E") @Between(min = 0.001, max = 1e7) double young,
      @Named("nu") @Between(min = 0, max = 0.499) double poisson,
      @Meaning("of the shank, and of the thread over all") @Between(min = 0.1, max = 30)
          double diameter,
      @Meaning("of the core of its thread") @Between(min = 0.1, max = 30) double coreDiameter,
      @Meaning("leave its bending out") Optional<Boolean> rigid) {}
}
