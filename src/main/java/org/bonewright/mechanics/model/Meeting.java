package org.bonewright.mechanics.model;

import java.util.Optional;
import org.bonewright.mechanics.frame.Six;

/**
 * Finds where two bone ends come to rest against each other. The rest of the construct is reduced
 * to a spring of six movements between the ends, so that this is the minimum of a convex energy: a
 * Newton step with a line search always gets nearer to it. Six numbers stand in an array here, in
 * the order of {@link Six}.
 */
final class Meeting {

  private static final int SIX = 6;
  private static final int STEPS = 200;
  private static final int ROUNDS = 60;

  /** A gain of less than this share of the energy cannot be told from rounding. */
  private static final double ROUNDING = 1e-15;

  /** Share of what the slope promises that a step must bring (Armijo). */
  private static final double ENOUGH = 1e-4;

  private static final double SHORTEST = 1e-9;

  /** Friction is settled once the force that presses moves by less than this share of itself. */
  private static final double SETTLED = 1e-6;

  private final BoneEnds ends;
  private final double friction;
  private final double[][] spring;
  private final double rubbing;
  private final double turned;

  private Meeting(BoneEnds ends, double friction, double[][] spring) {
    this.ends = ends;
    this.friction = friction;
    this.spring = spring;
    this.rubbing = ends.closed().away();
    this.turned = ends.middle() * ends.middle();
  }

  /**
   * Prepare the meeting.
   *
   * @param ends the ends
   * @param friction coefficient of friction between them
   * @param give how the ends move against each other under unit forces between them, 6 × 6
   * @return empty if they move against each other without resistance
   */
  static Optional<Meeting> of(BoneEnds ends, double friction, double[][] give) {
    return SmallCholesky.of(give)
        .map(
            factor -> {
              double[][] spring = new double[SIX][SIX];
              for (int i = 0; i < SIX; i++) {
                spring[i][i] = 1;
                factor.solve(spring[i]);
              }
              return new Meeting(ends, friction, spring);
            });
  }

  /**
   * How two ends rest.
   *
   * @param movement of the distal end against the proximal one: six numbers
   * @param push on the distal end: six numbers
   * @param closed share of the ring that is closed, from 0 to 1
   * @param force that presses in N
   */
  record Rest(Six movement, Six push, double closed, double force) {}

  /**
   * Return how the ends rest.
   *
   * @param free how they would move if they could pass through each other
   * @param guess a movement near the answer, to start from
   * @return empty if no rest was found within the steps allowed
   */
  Optional<Rest> rest(double[] free, double[] guess) {
    double cap = 0;
    Place place = new Place(guess, free, cap);
    for (int round = 0; round < ROUNDS; round++) {
      Optional<Place> lowest = descend(place, free);
      if (lowest.isEmpty()) {
        return Optional.empty();
      }
      BoneEnds.Push push = lowest.get().push;
      double next = friction * push.force();
      if (Math.abs(next - cap) <= SETTLED * Math.max(1, next)) {
        return Optional.of(
            new Rest(Six.of(lowest.get().w), lowest.get().onDistal(), push.closed(), push.force()));
      }
      cap = next;
      place = lowest.get().under(cap);
    }
    return Optional.empty();
  }

  /** A movement that is looked at, with what the ends and the rest of the construct then do. */
  private final class Place {

    private final double[] w;
    private final double[] back = new double[SIX];
    private final double cap;
    private final BoneEnds.Push push;
    private final double elastic;
    private final double energy;

    private Place(double[] w, double[] free, double cap) {
      this.w = w;
      this.cap = cap;
      this.push = ends.push(w);
      this.elastic = elastic(w, free, back);
      this.energy = elastic + push.energy() + rubbed(w, cap);
    }

    /** The same movement, with other friction. */
    private Place(Place other, double cap) {
      this.w = other.w;
      this.cap = cap;
      this.push = other.push;
      this.elastic = other.elastic;
      System.arraycopy(other.back, 0, back, 0, SIX);
      this.energy = elastic + push.energy() + rubbed(w, cap);
    }

    private Place under(double otherCap) {
      return new Place(this, otherCap);
    }

    private Place down(double[] way, double length, double[] free) {
      double[] next = new double[SIX];
      for (int i = 0; i < SIX; i++) {
        next[i] = w[i] - length * way[i];
      }
      return new Place(next, free, cap);
    }

    private double[] slope() {
      double rub = rub(w, cap);
      return new double[] {
        back[0] - push.force(),
        back[1] + rub * w[1],
        back[2] + rub * w[2],
        back[3] + rub * turned * w[3],
        back[4] - push.about4(),
        back[5] - push.about5()
      };
    }

    private Six onDistal() {
      double rub = rub(w, cap);
      return new Six(
          push.force(),
          -rub * w[1],
          -rub * w[2],
          -rub * turned * w[3],
          push.about4(),
          push.about5());
    }
  }

  /** Go down to where the energy is least; empty if that was not found. */
  private Optional<Place> descend(Place from, double[] free) {
    Place here = from;
    for (int step = 0; step < STEPS; step++) {
      double[] slope = here.slope();
      double[] down = slope.clone();
      Optional<SmallCholesky> stiffness = SmallCholesky.of(stiffness(here));
      if (stiffness.isEmpty()) {
        return Optional.empty();
      }
      stiffness.get().solve(down);
      double gain = 0;
      for (int i = 0; i < SIX; i++) {
        gain += slope[i] * down[i];
      }
      if (gain <= ROUNDING * (1 + here.energy)) {
        return Optional.of(here.down(down, 1, free));
      }
      Optional<Place> lower = lower(here, down, free, gain);
      if (lower.isEmpty()) {
        return Optional.of(here); // nothing lower within rounding: this is the rest
      }
      here = lower.get();
    }
    return Optional.empty();
  }

  /** Go down the slope to a place that is lower, as far as numbers can tell. */
  private Optional<Place> lower(Place here, double[] down, double[] free, double gain) {
    for (double length = 1; length > SHORTEST; length /= 2) {
      Place there = here.down(down, length, free);
      if (there.energy < here.energy && there.energy <= here.energy - ENOUGH * length * gain) {
        return Optional.of(there);
      }
    }
    return Optional.empty();
  }

  /** Return the energy in the rest of the construct; tell the forces with which it pulls back. */
  private double elastic(double[] w, double[] free, double[] back) {
    double twice = 0;
    for (int i = 0; i < SIX; i++) {
      double sum = 0;
      for (int j = 0; j < SIX; j++) {
        sum += spring[i][j] * (w[j] - free[j]);
      }
      back[i] = sum;
      twice += sum * (w[i] - free[i]);
    }
    return twice / 2;
  }

  private double[][] stiffness(Place place) {
    BoneEnds.Push push = place.push;
    double rub = rub(place.w, place.cap);
    double[][] sum = new double[SIX][];
    for (int i = 0; i < SIX; i++) {
      sum[i] = spring[i].clone();
    }
    sum[0][0] += push.k00();
    sum[1][1] += rub;
    sum[2][2] += rub;
    sum[3][3] += rub * turned;
    sum[4][0] += push.k04();
    sum[4][4] += push.k44();
    sum[5][0] += push.k05();
    sum[5][4] += push.k45();
    sum[5][5] += push.k55();
    double slide = slide(place.w);
    if (place.cap > 0 && rubbing * slide > place.cap) {
      lessAlong(place.w, slide, rub, sum);
    }
    return sum;
  }

  /** Return how far the ends have slid, twist included, in mm. */
  private double slide(double[] w) {
    return Math.sqrt(w[1] * w[1] + w[2] * w[2] + turned * w[3] * w[3]);
  }

  /**
   * Friction: a spring against sliding and twisting that cannot carry more than {@code cap}. Return
   * its stiffness; beyond the cap its tangent is left out but for the part across the slide, which
   * keeps the energy convex.
   */
  private double rub(double[] w, double cap) {
    if (cap <= 0) {
      return 0;
    }
    double slide = slide(w);
    return rubbing * slide <= cap ? rubbing : cap / slide;
  }

  /** Return the energy that friction has taken up, in N·mm. */
  private double rubbed(double[] w, double cap) {
    if (cap <= 0) {
      return 0;
    }
    double slide = slide(w);
    return rubbing * slide <= cap
        ? 0.5 * rubbing * slide * slide
        : cap * slide - 0.5 * cap * cap / rubbing;
  }

  /** Ends that slide are not stiffer along the slide: the friction does not grow with it. */
  private void lessAlong(double[] w, double slide, double rub, double[][] sum) {
    double[] along = {w[1] / slide, w[2] / slide, turned * w[3] / slide};
    for (int i = 0; i < along.length; i++) {
      for (int j = 0; j <= i; j++) {
        sum[i + 1][j + 1] -= rub * along[i] * along[j];
      }
    }
  }
}
