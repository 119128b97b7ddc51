package org.bonewright.mechanics.model;

import java.util.Optional;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.SixSquare;

/**
 * Finds where two bone ends come to rest against each other. The rest of the construct is reduced
 * to a spring of six movements between the ends, so that this is the minimum of a convex energy: a
 * Newton step with a line search always gets nearer to it.
 */
final class Meeting {

  private static final int STEPS = 200;
  private static final int ROUNDS = 60;
  private static final double CLOSE = 1e-9;

  /** Share of what the slope promises that a step must bring (Armijo). */
  private static final double ENOUGH = 1e-4;

  private static final double SHORTEST = 1e-9;

  /** Friction is settled once the force that presses moves by less than this share of itself. */
  private static final double SETTLED = 1e-6;

  private final BoneEnds ends;
  private final double friction;
  private final SixSquare spring;

  /**
   * Prepare the meeting.
   *
   * @param ends the ends
   * @param friction coefficient of friction between them
   * @param give how the ends move against each other under unit forces between them, 6 × 6
   */
  Meeting(BoneEnds ends, double friction, SixSquare give) {
    this.ends = ends;
    this.friction = friction;
    this.spring = give.inverse();
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
   * @return empty if no rest was found within the steps allowed
   */
  Optional<Rest> rest(Six free) {
    double cap = 0;
    Six from = free;
    for (int round = 0; round < ROUNDS; round++) {
      Optional<Six> found = minimum(from, free, cap);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      Six w = found.get();
      BoneEnds.Push push = ends.push(w);
      double next = friction * push.force();
      if (Math.abs(next - cap) <= SETTLED * Math.max(1, next)) {
        Six all = push.push().plus(rub(w, cap).push());
        return Optional.of(new Rest(w, all, push.closed(), push.force()));
      }
      cap = next;
      from = w;
    }
    return Optional.empty();
  }

  private Optional<Six> minimum(Six from, Six free, double cap) {
    Six w = from;
    for (int step = 0; step < STEPS; step++) {
      State state = state(w, free, cap);
      Six down = state.stiffness().solve(state.slope());
      double gain = state.slope().dot(down);
      if (gain <= CLOSE * CLOSE * (1 + state.energy())) {
        return Optional.of(w);
      }
      Optional<Six> lower = lower(w, down, free, cap, state.energy(), gain);
      if (lower.isEmpty()) {
        return Optional.of(w); // nothing lower within rounding: this is the rest
      }
      w = lower.get();
    }
    return Optional.empty();
  }

  /** Return a place down the slope that is lower, as far as numbers can tell. */
  private Optional<Six> lower(Six w, Six down, Six free, double cap, double energy, double gain) {
    for (double length = 1; length > SHORTEST; length /= 2) {
      Six next = w.minus(down.times(length));
      double there = state(next, free, cap).energy();
      if (there < energy && there <= energy - ENOUGH * length * gain) {
        return Optional.of(next);
      }
    }
    return Optional.empty();
  }

  private record State(double energy, Six slope, SixSquare stiffness) {}

  private State state(Six w, Six free, double cap) {
    Six away = w.minus(free);
    Six back = spring.times(away);
    BoneEnds.Push push = ends.push(w);
    Rub rub = rub(w, cap);
    return new State(
        0.5 * back.dot(away) + push.energy() + rub.energy(),
        back.minus(push.push()).minus(rub.push()),
        new SixSquare.Maker()
            .add(spring)
            .add(push.stiffness())
            .add(SixSquare.diagonal(rub.stiffness()))
            .make());
  }

  private record Rub(double energy, Six push, Six stiffness) {}

  /**
   * Friction: a spring against sliding and twisting that cannot carry more than {@code cap}. Beyond
   * that its tangent is left out but for the part across the slide, which keeps the energy convex.
   */
  private Rub rub(Six w, double cap) {
    if (cap <= 0) {
      return new Rub(0, Six.NONE, Six.NONE);
    }
    double spring = ends.closed().away();
    double turned = ends.middle() * ends.middle();
    double slide =
        Math.sqrt(
            w.away() * w.away()
                + w.across() * w.across()
                + turned * w.aboutAlong() * w.aboutAlong());
    boolean sticks = spring * slide <= cap;
    double each = sticks ? spring : cap / slide;
    Six stiffness = new Six(0, each, each, each * turned, 0, 0);
    Six push =
        new Six(0, -each * w.away(), -each * w.across(), -each * turned * w.aboutAlong(), 0, 0);
    double energy = sticks ? 0.5 * spring * slide * slide : cap * slide - 0.5 * cap * cap / spring;
    return new Rub(energy, push, stiffness);
  }
}
