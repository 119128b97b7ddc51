package org.bonewright.measures.load;

import org.bonewright.bone.Dimension;

/**
 * How hard a bone is pressed together, bent and twisted, each somewhere in a range. In N and N·m,
 * or for each newton of body weight: then a pure number and two lengths in m.
 *
 * @param press force along the bone that presses it together
 * @param bending bending moment
 * @param torsion torsion, whichever way round
 */
public record LoadSpans(Dimension press, Dimension bending, Dimension torsion) {

  /**
   * Refuses what pulls.
   *
   * @throws IllegalArgumentException if a range reaches below zero
   */
  public LoadSpans {
    if (press.min() < 0 || bending.min() < 0 || torsion.min() < 0) {
      throw new IllegalArgumentException("below zero");
    }
  }

  /** Return spans from a table: lowest and highest of each. */
  static LoadSpans assumed(double... ends) {
    return new LoadSpans(
        Dimension.assumed(ends[0], ends[1], ""),
        Dimension.assumed(ends[2], ends[3], ""),
        Dimension.assumed(ends[4], ends[5], ""));
  }

  /** Return them as often as a factor that may be a range says. */
  LoadSpans times(Dimension factor) {
    return new LoadSpans(times(press, factor), times(bending, factor), times(torsion, factor));
  }

  /** Return the same with another pressing force. */
  LoadSpans pressing(Dimension other) {
    return new LoadSpans(other, bending, torsion);
  }

  /** Return, bound by bound, the larger of the two. */
  LoadSpans atLeast(LoadSpans floor) {
    return with(floor, LoadSpans::larger);
  }

  /** Return the ranges from here to there. */
  LoadSpans upTo(LoadSpans other) {
    return with(
        other,
        (a, b) ->
            new Dimension(
                Math.min(a.min(), b.min()),
                Math.max(a.max(), b.max()),
                a.assumed() || b.assumed(),
                ""));
  }

  /**
   * Return what lies this share of the way to others, bound by bound.
   *
   * @param share 0 for these, 1 for the others; may be a range
   */
  LoadSpans toward(LoadSpans other, Dimension share) {
    return with(
        other,
        (a, b) ->
            Dimension.assumed(
                a.min() + share.min() * (b.min() - a.min()),
                a.max() + share.max() * (b.max() - a.max()),
                ""));
  }

  private static Dimension larger(Dimension one, Dimension other) {
    return new Dimension(
        Math.max(one.min(), other.min()),
        Math.max(one.max(), other.max()),
        one.assumed() || other.assumed(),
        "");
  }

  static Dimension times(Dimension span, Dimension factor) {
    return new Dimension(
        span.min() * factor.min(),
        span.max() * factor.max(),
        span.assumed() || factor.assumed(),
        "");
  }

  private LoadSpans with(LoadSpans other, java.util.function.BinaryOperator<Dimension> join) {
    return new LoadSpans(
        join.apply(press, other.press),
        join.apply(bending, other.bending),
        join.apply(torsion, other.torsion));
  }

  /** Return them in words, such as {@code pressing 300–500 N, bending 10–20 N·m, torsion 5 N·m}. */
  public String inWords() {
    return "pressing "
        + press.numbers()
        + " N, bending "
        + bending.numbers()
        + " N·m, torsion "
        + torsion.numbers()
        + " N·m";
  }
}
