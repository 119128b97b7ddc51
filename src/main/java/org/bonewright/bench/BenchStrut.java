package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;

/** A strut on the axis of the bone, which has diameters, or on its surface, which has a width. */
record BenchStrut(
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Meaning("on the axis of the bone") @Between(min = 0.1, max = 100)
        Optional<Double> outerDiameter,
    @Between(min = 0, max = 100) Optional<Double> innerDiameter,
    @Meaning("round the bone, of a strut on its surface") @Between(min = 0.1, max = 100)
        Optional<Double> width,
    @Between(min = 0.1, max = 50) Optional<Double> thickness,
    @Meaning("degrees around the bone, of a strut on its surface") Optional<Double> azimuth,
    @Meaning("levels of wires around bone and a strut on its surface") List<Double> wires,
    double from,
    double to) {

  /** Return whether it lies on the surface of the bone. */
  boolean onlay() {
    return width.isPresent() || thickness.isPresent() || azimuth.isPresent() || !wires.isEmpty();
  }
}
