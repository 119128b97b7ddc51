package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** Aftercare as ordered. */
public record Aftercare(
    @Meaning("Load limits in order of time.") Optional<List<LoadStep>> load,
    @Meaning("Whether the limits were kept.") Optional<Answer> followed,
    @Meaning("Weeks of the visits.") @Between(min = 0, max = 260)
        Optional<List<Quantity>> visitsWeeks,
    @Meaning("Day after the operation from which joints move.") @Between(min = 0, max = 365)
        Optional<Quantity> motionFromDay,
    @Meaning("How a nerve that does not work is followed.")
        Optional<NerveFollowUp> nerveFollowUp) {}
