package org.bonewright.casefile;

import java.util.Optional;

/** The part of the bone that is broken, or has not united. */
public record Zone(
    @Meaning("Level in mm of its near end.") @Between(min = 0, max = 600) Optional<Quantity> fromMm,
    @Meaning("Level in mm of its far end.") @Between(min = 0, max = 600) Optional<Quantity> toMm,
    @Meaning("Its length in mm, where the levels are not known.") @Between(min = 0, max = 400)
        Optional<Quantity> lengthMm) {}
