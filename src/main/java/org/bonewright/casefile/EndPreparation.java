package org.bonewright.casefile;

import java.util.Optional;

/** How the ends of the bone were prepared before they were put together. */
public record EndPreparation(
    @Meaning("Whether both ends were cut back to bleeding bone.") Optional<Answer> toBleedingBone,
    @Meaning("Whether the canal was opened on both sides.") Optional<Answer> canalOpened) {}
