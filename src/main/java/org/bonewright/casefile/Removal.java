package org.bonewright.casefile;

import java.util.List;

/** Metal taken out. */
public record Removal(
    @Meaning("What was taken out: operation and implant.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}/[a-z0-9][a-z0-9-]{0,39}",
            inWords = "operation and implant with a slash between, such as op-1/plate-1")
        String of,
    @Meaning("For single screws of a plate, their holes; empty when the whole implant came out.")
        @Between(min = 1, max = 30)
        List<Integer> holes,
    @Meaning("Pieces left behind.") List<LeftPiece> left) {}
