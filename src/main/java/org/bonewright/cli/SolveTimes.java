package org.bonewright.cli;

import java.util.Arrays;
import java.util.Locale;
import org.bonewright.bench.BenchAnswer;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.MechanicalModel;

/**
 * How long a construct takes. The one place that looks at a clock: only people read what it tells.
 *
 * @param constructMs middle of the times to set up a construct and answer one load, in ms
 * @param furtherLoadMs middle of the times to answer one load more, in ms
 */
record SolveTimes(double constructMs, double furtherLoadMs) {

  private static final double NANOS = 1e6;

  /** Rounds that the compiler of the JVM needs until it has seen what is solved often. */
  private static final int WARM_UP = 2000;

  /** Time a construct so many times, after enough rounds to warm up. */
  static SolveTimes of(BenchAnswer.OfConstruct construct, int repeats) {
    Load load = construct.loads().isEmpty() ? Load.axial(-1) : construct.loads().get(0).load();
    times(construct, load, WARM_UP);
    return times(construct, load, repeats);
  }

  private static SolveTimes times(BenchAnswer.OfConstruct construct, Load load, int repeats) {
    double[] whole = new double[repeats];
    double[] further = new double[repeats];
    for (int i = 0; i < repeats; i++) {
      long start = System.nanoTime();
      MechanicalModel model = new MechanicalModel(construct.bone());
      model.under(load);
      long first = System.nanoTime();
      model.under(load);
      whole[i] = (first - start) / NANOS;
      further[i] = (System.nanoTime() - first) / NANOS;
    }
    return new SolveTimes(middle(whole), middle(further));
  }

  private static double middle(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /** Return the times as a line of text. */
  String inWords() {
    return String.format(
        Locale.ROOT,
        "TIME  %.2f ms for the construct and a load, %.2f ms for a further load%n",
        constructMs,
        furtherLoadMs);
  }
}
