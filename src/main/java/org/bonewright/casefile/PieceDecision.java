package org.bonewright.casefile;

import java.util.Optional;

/** What is done about a piece of metal that an earlier operation left in the bone. */
public record PieceDecision(
    @Meaning("Which piece: the operation that left it, and its name.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}/[a-z0-9][a-z0-9-]{0,39}",
            inWords = "operation and piece with a slash between, such as op-2/screw-tip")
        String of,
    @Meaning("Whether it stays.") Decision decision,
    @Meaning("Why; shown, never used by a rule.") Optional<String> why) {

  /** What becomes of a piece. */
  public enum Decision {
    STAYS,
    REMOVED
  }
}
