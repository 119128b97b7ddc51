package org.bonewright.measures.force;

import java.util.List;

/**
 * The number that is shown for many: the one in the middle. What comes of the middle of every
 * assumption will not do: where any side may be bent open, the middle is the side on which the pull
 * of the load and its bending cancel out, and the number is lower than nearly all of the others.
 */
final class Middle {

  private Middle() {}

  /** Return the number that half of them do not exceed; one of them at the least. */
  static double of(List<Double> values) {
    return values.stream().sorted().toList().get((values.size() - 1) / 2);
  }
}
