package org.bonewright.casefile;

import java.util.Optional;

/** A piece of metal left behind. */
public record LeftPiece(
    @Meaning("Name of the piece within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        Optional<String> id,
    @Meaning("What it is.") String piece,
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Optional<Quantity> atMm,
    @Meaning("Why it was left.") Optional<String> why) {}
