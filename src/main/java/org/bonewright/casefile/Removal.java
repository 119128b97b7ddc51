package org.bonewright.casefile;

import java.util.List;

/** Metal taken out. */
public record Removal(
    @Meaning("What was taken out: operation and implant.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}/[a-z0-9][a-z0-9-]{0,39}",
            inWords = "operation and implant with a slash between, such as op-1/plate-1")
        String of,
    @Meaning("For single screws of a plate, their holes; empty when all came out.")
        @Between(min = 1, max = 30)
        List<Integer> holes,
    @Meaning(
            "For single bolts of a nail, their places in its list, from 1; empty when all came out.")
        @Between(min = 1, max = 20)
        List<Integer> bolts,
    @Meaning(
            "For single pins of a fixator, their places in its list, from 1; empty when all came out.")
        @Between(min = 1, max = 30)
        List<Integer> pins,
    @Meaning("Pieces left behind.") List<LeftPiece> left) {

  /** Return whether the implant came out as a whole, not just single screws, bolts or pins. */
  public boolean isWhole() {
    return holes.isEmpty() && bolts.isEmpty() && pins.isEmpty();
  }
}
