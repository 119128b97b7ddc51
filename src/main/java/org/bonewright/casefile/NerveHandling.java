package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** How the nerve at risk was handled. */
public record NerveHandling(
    @Meaning("Whether it was seen.") Optional<Answer> seen,
    @Meaning("Plate holes that it crosses.") @Between(min = 1, max = 30)
        List<Integer> holesCrossed) {}
