package org.bonewright.casefile;

import java.util.Optional;

/** Deep tissue or implant samples taken at an operation, or planned. */
public record Sampling(
    @Meaning("Separate deep samples, each with a clean instrument.") @Between(min = 0, max = 30)
        Quantity deepSamples,
    @Meaning("Whether one more goes to histology.") Optional<Answer> histology,
    @Meaning("Days of culture.") @Between(min = 0, max = 42) Optional<Quantity> cultureDays) {}
