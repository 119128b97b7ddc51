package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** What deep samples grew. */
public record SampleResult(
    @Meaning("Separate deep samples taken.") @Between(min = 0, max = 30) Quantity taken,
    @Meaning("In how many of them the same organism grew.") @Between(min = 0, max = 30)
        Optional<Quantity> sameOrganism,
    @Meaning("Organisms, for the reader.") List<String> organisms) {}
