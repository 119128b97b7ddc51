package org.bonewright.casefile;

import java.util.Optional;

/** A piece of metal left behind. */
public record LeftPiece(
    @Meaning("What it is.") String piece,
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Optional<Quantity> atMm,
    @Meaning("Why it was left.") Optional<String> why) {}
