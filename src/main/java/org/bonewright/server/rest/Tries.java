package org.bonewright.server.rest;

import java.util.Optional;
import org.bonewright.change.Improver;

/**
 * How many plans a walk may judge at the most, as a request asks for it.
 *
 * @param most from 1 to {@link Improver#HIGHEST_MOST}
 */
record Tries(int most) {

  /** Says that what was asked for is no such number. */
  static final class NotANumber extends Exception {
    private static final long serialVersionUID = 1L;

    NotANumber(String found) {
      super("tries takes a number from 1 to " + Improver.HIGHEST_MOST + ", not \"" + found + "\".");
    }
  }

  /**
   * Read it; where nothing is asked for, the usual number.
   *
   * @throws NotANumber if it is not a whole number within the range
   */
  static Tries of(Optional<String> asked) throws NotANumber {
    return asked.isEmpty() ? new Tries(Improver.USUAL_MOST) : of(asked.get());
  }

  private static Tries of(String asked) throws NotANumber {
    try {
      int most = Integer.parseInt(asked);
      if (most >= 1 && most <= Improver.HIGHEST_MOST) {
        return new Tries(most);
      }
    } catch (NumberFormatException notANumber) {
      throw new NotANumber(asked);
    }
    throw new NotANumber(asked);
  }
}
