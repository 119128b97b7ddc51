package org.bonewright.measures.force;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds which assumption moves a number most. The sets are sorted by the place of an assumption in
 * its range and cut into eight equal parts; the more the mean rank of the number differs between
 * the parts, the more the assumption moves it, whichever way (the first-order index of a
 * sensitivity analysis, from the ranks).
 */
final class Decides {

  private static final int PARTS = 8;

  private Decides() {}

  /**
   * Return it in words.
   *
   * @param values the number under each set, in order
   * @param draws the sets, in the same order
   */
  static String of(List<Double> values, List<Draw> draws) {
    double[] ranks = ranks(values);
    return Arrays.stream(Assumption.values())
        .max(Comparator.comparingDouble(assumption -> moves(assumption, draws, ranks)))
        .map(Assumption::words)
        .orElseThrow();
  }

  private static double moves(Assumption assumption, List<Draw> draws, double[] ranks) {
    int[] byPlace =
        IntStream.range(0, ranks.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> draws.get(i).place(assumption)))
            .mapToInt(Integer::intValue)
            .toArray();
    double middle = (ranks.length - 1) / 2.0;
    double sum = 0;
    for (int part = 0; part < PARTS; part++) {
      int from = part * ranks.length / PARTS;
      int to = (part + 1) * ranks.length / PARTS;
      double off = IntStream.range(from, to).mapToDouble(i -> ranks[byPlace[i]] - middle).sum();
      sum += to > from ? off * off / (to - from) : 0;
    }
    return sum;
  }

  /** Equal values share the mean of their ranks. */
  private static double[] ranks(List<Double> values) {
    int[] order =
        IntStream.range(0, values.size())
            .boxed()
            .sorted(Comparator.comparing(values::get))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] ranks = new double[order.length];
    int from = 0;
    while (from < order.length) {
      int to = from;
      while (to + 1 < order.length && values.get(order[to + 1]).equals(values.get(order[from]))) {
        to++;
      }
      for (int i = from; i <= to; i++) {
        ranks[order[i]] = (from + to) / 2.0;
      }
      from = to + 1;
    }
    return ranks;
  }
}
