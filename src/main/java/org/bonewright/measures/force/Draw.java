package org.bonewright.measures.force;

import java.util.EnumMap;
import java.util.Map;
import org.bonewright.bone.Dimension;

/** One set of assumptions: a place from 0 to 1 within the range of each. */
final class Draw {

  private static final double HALF_WAY = 0.5;

  /** Everything in the middle of its range. */
  static final Draw MIDDLE = new Draw(Map.of());

  private final Map<Assumption, Double> places = new EnumMap<>(Assumption.class);

  /**
   * Make a set.
   *
   * @param told the place of each assumption; what is left out lies half way
   */
  Draw(Map<Assumption, Double> told) {
    places.putAll(told);
  }

  /** Return the place within the range of an assumption, 0 to 1. */
  double place(Assumption assumption) {
    return places.getOrDefault(assumption, HALF_WAY);
  }

  /** Return the value of an assumption within its range. */
  double in(Dimension range, Assumption assumption) {
    return between(range.min(), range.max(), assumption);
  }

  /** Return the value of an assumption between two bounds. */
  double between(double min, double max, Assumption assumption) {
    return min + (max - min) * place(assumption);
  }
}
