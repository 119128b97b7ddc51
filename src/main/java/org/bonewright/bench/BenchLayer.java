package org.bonewright.bench;

import org.bonewright.casefile.Between;
import org.bonewright.casefile.Named;

/** What a bonded layer between the bone ends is made of. */
record BenchLayer(
    @Named("E") @Between(min = 0.0001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson) {}
