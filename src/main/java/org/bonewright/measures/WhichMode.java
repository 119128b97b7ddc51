package org.bonewright.measures;

import java.util.stream.Collectors;
import org.bonewright.casefile.FailureMode;

/** Asks which of two modes of failure it was, where the file leaves that open. */
public final class WhichMode {

  private WhichMode() {}

  /**
   * Return the question that settles the mode.
   *
   * @param mode a mode that leaves two open
   */
  public static String question(FailureMode mode) {
    return "Which was it: "
        + mode.possible().stream().map(Words::of).collect(Collectors.joining(" or "))
        + "?";
  }
}
