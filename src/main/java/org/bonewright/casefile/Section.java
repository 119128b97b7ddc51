package org.bonewright.casefile;

import java.util.Optional;

/** The bone's cross-section at one level. */
public record Section(
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Quantity atMm,
    @Meaning("Outer diameter in mm.") @Between(min = 3, max = 120) Optional<Quantity> outerMm,
    @Meaning("Diameter of the canal in mm.") @Between(min = 0, max = 100)
        Optional<Quantity> canalMm) {}
