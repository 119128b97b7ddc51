package org.bonewright.measures.force;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Finds which assumption moves a number most. The sets are sorted by the place of an assumption in
 * its range and cut into eight equal parts; the more the mean rank of the number differs between
 * the parts, the more the assumption moves it, whichever way (the first-order index of a
 * sensitivity analysis, from the ranks).
 */
final class Decides {

  private static final int PARTS = 8;

  /** Nearly every construct has an answer under all sets, so that these are sorted once. */
  private static final Decides ALL = new Decides(Draws.all());

  private final Map<Assumption, int[]> byPlace = new EnumMap<>(Assumption.class);

  private Decides(List<Draw> draws) {
    for (Assumption assumption : Assumption.values()) {
      byPlace.put(assumption, order(draws.size(), i -> draws.get(i).place(assumption)));
    }
  }

  /** Return what tells it of numbers under these sets. */
  static Decides among(List<Draw> draws) {
    return draws.equals(Draws.all()) ? ALL : new Decides(draws);
  }

  /**
   * Return it in words.
   *
   * @param values the number under each set, in the order of the sets
   */
  String of(List<Double> values) {
    double[] ranks = ranks(values);
    return byPlace.entrySet().stream()
        .max(Comparator.comparingDouble(entry -> moves(entry.getValue(), ranks)))
        .map(entry -> entry.getKey().words())
        .orElseThrow();
  }

  private static double moves(int[] byPlace, double[] ranks) {
    double middle = (ranks.length - 1) / 2.0;
    double sum = 0;
    for (int part = 0; part < PARTS; part++) {
      int from = part * ranks.length / PARTS;
      int to = (part + 1) * ranks.length / PARTS;
      double off = 0;
      for (int i = from; i < to; i++) {
        off += ranks[byPlace[i]] - middle;
      }
      sum += to > from ? off * off / (to - from) : 0;
    }
    return sum;
  }

  private static int[] order(int count, IntToDoubleFunction by) {
    return IntStream.range(0, count)
        .boxed()
        .sorted(Comparator.comparingDouble(by::applyAsDouble))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Equal values share the mean of their ranks. */
  private static double[] ranks(List<Double> values) {
    int[] order = order(values.size(), values::get);
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
