package org.bonewright.bench;

import org.bonewright.casefile.Between;
import org.bonewright.casefile.Named;

/** A strut on the axis of the bone. */
record BenchStrut(
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Between(min = 0.1, max = 100) double outerDiameter,
    @Between(min = 0, max = 100) double innerDiameter,
    double from,
    double to) {}
