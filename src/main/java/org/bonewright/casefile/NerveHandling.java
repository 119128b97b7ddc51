package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** How the nerve at risk was handled. */
public record NerveHandling(
    @Meaning("Whether it was seen.") Optional<Answer> seen,
    @Meaning("Plate holes that it crosses; an empty list means none.") @Between(min = 1, max = 30)
        Optional<List<Integer>> holesCrossed,
    @Meaning("Whether its function is examined and written down within a day after the operation.")
        Optional<Answer> examinedAfter) {}
