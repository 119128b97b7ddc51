package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.random.HaltonSequenceGenerator;

/**
 * The sets of assumptions under which everything is solved: points of a scrambled Halton sequence,
 * which fill the ranges evenly and are the same in every review.
 */
final class Draws {

  /** How many sets there are. */
  static final int NUMBER = 200;

  /** The first points of the sequence lie on lines in the higher dimensions; they are left out. */
  private static final int LEFT_OUT = 409;

  private static final List<Draw> ALL = draw();

  private Draws() {}

  /** Return the sets, always the same ones in the same order. */
  static List<Draw> all() {
    return ALL;
  }

  private static List<Draw> draw() {
    HaltonSequenceGenerator halton = new HaltonSequenceGenerator(Assumption.values().length);
    halton.skipTo(LEFT_OUT);
    List<Draw> draws = new ArrayList<>();
    for (int i = 0; i < NUMBER; i++) {
      double[] point = halton.nextVector();
      Map<Assumption, Double> places = new EnumMap<>(Assumption.class);
      for (Assumption assumption : Assumption.values()) {
        places.put(assumption, point[places.size()]);
      }
      draws.add(new Draw(places));
    }
    return List.copyOf(draws);
  }
}
