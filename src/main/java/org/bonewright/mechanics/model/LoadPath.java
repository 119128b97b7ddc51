package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.frame.Six;

/**
 * Raises a load from nothing to its full size and lets the patches under pressed screws give way in
 * the order in which they reach what they can bear: tilt, slip, lift; and a nail come to lie
 * against the wall of its canal. Where threads are watched, it ends when one of them is pulled out.
 */
final class LoadPath {

  private static final Load NOTHING = Load.axial(0);
  private static final Change[] CHANGES = Change.values();
  private static final double START = 1e-6;

  /** The share of a load under which a bone that hangs on one bolt has met its nail. */
  private static final double SOON = 1.0 / 256;

  /** How often a smaller share of a load is tried where the ends find no rest under it. */
  private static final int TRIALS = 16;

  /** Of two as near to giving way as symmetry makes them, the first gives way first. */
  private static final double EQUAL = 1e-6;

  private final Reduced reduced;
  private final Optional<Response> whole;
  private final Optional<End> unloaded;

  LoadPath(Reduced reduced) {
    this.reduced = reduced;
    this.whole = Response.of(reduced, spots().stream().map(Joined.Spot::start).toList());
    this.unloaded = whole.flatMap(response -> raise(NOTHING, response, List.of()));
  }

  /** Return whether any thread is watched. */
  boolean watches() {
    return !reduced.threads().isEmpty();
  }

  private List<Joined.Spot> spots() {
    return reduced.joined().spots();
  }

  /**
   * Something that gave way.
   *
   * @param share of the load at which it did, from 0 to 1
   * @param screw index of the screw whose thread was pulled out; empty for all else
   * @param at level in mm
   * @param what it did
   */
  record Event(double share, OptionalInt screw, double at, Change what) {}

  /**
   * Where the path ended.
   *
   * @param answer to the share of the load that was reached
   * @param reached the share of the load that was reached; 1 is all of it
   * @param events what gave way, in order
   */
  record End(Answer answer, double reached, List<Event> events) {}

  /**
   * Return how the bone stands before any load.
   *
   * @return empty if bone ends found no rest
   */
  Optional<End> unloaded() {
    return unloaded;
  }

  /**
   * Raise a load.
   *
   * @return empty if bone ends found no rest
   */
  Optional<End> raise(Load load) {
    return unloaded.flatMap(before -> raise(load, before.answer().response(), before.events()));
  }

  private Optional<End> raise(Load load, Response first, List<Event> before) {
    List<Event> events = new ArrayList<>(before);
    Response response = first;
    double from = 0;
    while (true) {
      Response.Line line = response.to(load);
      Optional<Reached> far = far(response, line, from);
      if (far.isEmpty()) {
        return Optional.empty();
      }
      Optional<Failing> beyond = worst(response, far.get().point());
      if (beyond.isEmpty()) {
        return Optional.of(new End(line.whole(far.get().point()), 1, List.copyOf(events)));
      }
      double share = first(response, line, from, far.get().share(), beyond.get().excess() - START);
      Optional<Response.Point> there = line.at(share);
      Response now = response;
      Optional<Failing> failing = there.flatMap(point -> worst(now, point));
      if (there.isEmpty() || failing.isEmpty()) {
        return Optional.empty();
      }
      Failing failed = failing.get();
      events.add(event(share, failed));
      if (failed.what() == Change.PULLED) {
        return Optional.of(new End(line.whole(there.get()), share, List.copyOf(events)));
      }
      List<Stand> stands = new ArrayList<>(response.stands());
      stands.set(failed.index(), failed.after(stands.get(failed.index())));
      Optional<Response> next = Response.of(reduced, stands);
      if (next.isEmpty()) {
        // Nothing resists any more: the load reached is what was held.
        return Optional.of(new End(line.whole(there.get()), share, List.copyOf(events)));
      }
      response = next.get();
      from = share;
    }
  }

  /** A share of a load, and what it does. */
  private record Reached(double share, Response.Point point) {}

  /**
   * Return what all of the load does. Where the ends find no rest under that, since what would stop
   * them has not come yet, return a share at which something has changed by then.
   */
  private Optional<Reached> far(Response response, Response.Line line, double from) {
    if (swings(response)) {
      double soon = from + (1 - from) * SOON;
      Optional<Response.Point> there = line.at(soon);
      if (there.filter(point -> worst(response, point).isPresent()).isPresent()) {
        return there.map(point -> new Reached(soon, point));
      }
    }
    Optional<Response.Point> all = line.at(1);
    return all.isPresent() ? all.map(point -> new Reached(1, point)) : before(response, line, from);
  }

  private Optional<Reached> before(Response response, Response.Line line, double from) {
    double fine = from;
    double tooFar = 1;
    for (int trial = 0; trial < TRIALS; trial++) {
      double share = fine + (tooFar - fine) / 4;
      Optional<Response.Point> there = line.at(share);
      if (there.isEmpty()) {
        tooFar = share;
      } else if (worst(response, there.get()).isPresent()) {
        return there.map(point -> new Reached(share, point));
      } else {
        fine = share;
      }
    }
    return Optional.empty();
  }

  /** Return whether a nail has not met its canal yet: that happens soon, where it does at all. */
  private static boolean swings(Response response) {
    return response.stands().stream()
        .anyMatch(stand -> stand instanceof RestStand && !stand.settled());
  }

  private Event event(double share, Failing failed) {
    if (failed.what() != Change.PULLED) {
      return new Event(share, OptionalInt.empty(), spots().get(failed.index()).at(), failed.what());
    }
    int screw = reduced.threads().get(failed.index()).screw();
    return new Event(
        share, OptionalInt.of(screw), reduced.fixed().screws().get(screw).at(), failed.what());
  }

  /** Return the smallest share of the load, from one that was borne, at which a patch gives way. */
  private double first(Response response, Response.Line line, double from, double to, double atTo) {
    DoubleUnaryOperator excess =
        share ->
            line.at(share)
                .map(point -> excess(response, point) - START)
                .orElse(Double.POSITIVE_INFINITY);
    double now = excess.applyAsDouble(from);
    return now > 0 || from >= to ? from : Crossing.beyond(excess, from, now, to, atTo);
  }

  /**
   * A point or a thread at which a change is due.
   *
   * @param index of the point; of the thread where that is pulled out
   * @param what it does next
   * @param carried what the point carries: six numbers
   * @param moved how it moved: six numbers
   * @param excess by how much the change is overdue
   */
  private record Failing(int index, Change what, Six carried, Six moved, double excess) {

    Stand after(Stand before) {
      return before.after(what, carried, moved);
    }
  }

  /** Return what carries most above what it can; empty where nothing does. */
  private Optional<Failing> worst(Response response, Response.Point point) {
    Failing worst = mostBurdened(response, point);
    return worst.excess() > START ? Optional.of(worst) : Optional.empty();
  }

  /** Return by how much it carries more than it can; below zero where nothing does. */
  private double excess(Response response, Response.Point point) {
    return mostBurdened(response, point).excess();
  }

  private Failing mostBurdened(Response response, Response.Point point) {
    Failing most = new Failing(0, Change.STICK, Six.NONE, Six.NONE, Double.NEGATIVE_INFINITY);
    for (int spot = 0; spot < spots().size(); spot++) {
      Stand stand = response.stands().get(spot);
      if (!stand.settled()) {
        Six carried = response.carried(point, spot);
        Six moved = response.moved(point, spot);
        for (Change next : CHANGES) {
          double excess = stand.excess(next, carried, moved);
          if (excess > most.excess() + EQUAL) {
            most = new Failing(spot, next, carried, moved, excess);
          }
        }
      }
    }
    for (int thread = 0; thread < reduced.threads().size(); thread++) {
      double capacity = reduced.threads().get(thread).capacity();
      double excess = response.pull(point, thread) / capacity - 1;
      if (excess > most.excess() + EQUAL) {
        most = new Failing(thread, Change.PULLED, Six.NONE, Six.NONE, excess);
      }
    }
    return most;
  }
}
