package org.bonewright.bench;

import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;

/** What presses the bone ends together before any load. */
record BenchPreload(
    @Between(min = 0, max = 100_000) double force,
    @Meaning("from the axis of the bone towards the plate") @Between(min = -100, max = 100)
        Optional<Double> eccentricity) {}
