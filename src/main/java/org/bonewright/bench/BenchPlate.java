package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;

/** A plate. */
record BenchPlate(
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Between(min = 0.1, max = 100) double width,
    @Between(min = 0.1, max = 50) double thickness,
    @Between(min = 0, max = 100) Optional<Double> standoff,
    @Between(min = 0.1, max = 100) double holeDiameter,
    @Meaning("levels of the holes") List<Double> holes,
    @Meaning("degrees around the bone") Optional<Double> azimuth) {}
