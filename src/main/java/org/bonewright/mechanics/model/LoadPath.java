package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.frame.Six;

/**
 * Raises a load from nothing to its full size and lets the patches under pressed screws give way in
 * the order in which they reach what they can bear: tilt, slip, lift. Where threads are watched, it
 * ends when one of them is pulled out.
 */
final class LoadPath {

  private static final Load NOTHING = Load.axial(0);
  private static final Patch.State[] STATES = Patch.State.values();
  private static final double START = 1e-6;

  /** Of two as near to giving way as symmetry makes them, the first gives way first. */
  private static final double EQUAL = 1e-6;

  private final Reduced reduced;
  private final Optional<Response> whole;
  private final Optional<End> unloaded;

  LoadPath(Reduced reduced) {
    this.reduced = reduced;
    List<PatchStand> stands = Collections.nCopies(patches().size(), PatchStand.WHOLE);
    this.whole = Response.of(reduced, stands);
    this.unloaded = whole.flatMap(response -> raise(NOTHING, response, List.of()));
  }

  /** Return whether any thread is watched. */
  boolean watches() {
    return !reduced.threads().isEmpty();
  }

  private List<Joined.Place> patches() {
    return reduced.joined().patches();
  }

  /**
   * Something that gave way.
   *
   * @param share of the load at which it did, from 0 to 1
   * @param screw index of the screw
   * @param what it did
   */
  record Event(double share, int screw, Patch.State what) {}

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
      Optional<Response.Point> all = line.at(1);
      if (all.isEmpty()) {
        return Optional.empty();
      }
      Optional<Failing> atAll = worst(response, all.get());
      if (atAll.isEmpty()) {
        return Optional.of(new End(line.whole(all.get()), 1, List.copyOf(events)));
      }
      double share = first(response, line, from, atAll.get().excess() - START);
      Optional<Response.Point> there = line.at(share);
      Response now = response;
      Optional<Failing> failing = there.flatMap(point -> worst(now, point));
      if (there.isEmpty() || failing.isEmpty()) {
        return Optional.empty();
      }
      Failing failed = failing.get();
      events.add(new Event(share, screw(failed), failed.what()));
      if (failed.what() == Patch.State.PULLED) {
        return Optional.of(new End(line.whole(there.get()), share, List.copyOf(events)));
      }
      List<PatchStand> stands = new ArrayList<>(response.stands());
      stands.set(failed.index(), after(stands.get(failed.index()), failed));
      Optional<Response> next = Response.of(reduced, stands);
      if (next.isEmpty()) {
        // Nothing resists any more: the load reached is what was held.
        return Optional.of(new End(line.whole(there.get()), share, List.copyOf(events)));
      }
      response = next.get();
      from = share;
    }
  }

  private int screw(Failing failed) {
    return failed.what() == Patch.State.PULLED
        ? reduced.threads().get(failed.index()).screw()
        : patches().get(failed.index()).screw();
  }

  private static PatchStand after(PatchStand before, Failing failing) {
    return switch (failing.what()) {
      case TILT -> before.afterTilt(failing.carried());
      case SLIP -> before.afterSlip(failing.carried());
      case LIFTED -> before.afterLift(failing.carried());
      case STICK, PULLED -> before;
    };
  }

  /** Return the smallest share of the load, from one that was borne, at which a patch gives way. */
  private double first(Response response, Response.Line line, double from, double atAll) {
    DoubleUnaryOperator excess =
        share ->
            line.at(share)
                .map(point -> excess(response, point) - START)
                .orElse(Double.POSITIVE_INFINITY);
    double now = excess.applyAsDouble(from);
    return now > 0 || from >= 1 ? from : Crossing.beyond(excess, from, now, 1, atAll);
  }

  /**
   * A patch or a thread that carries more than it can.
   *
   * @param index of the patch; of the thread where that is pulled out
   * @param what it does next
   * @param carried what the patch carries: six numbers
   * @param excess by how much of what it can bear
   */
  private record Failing(int index, Patch.State what, Six carried, double excess) {}

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
    Failing most = new Failing(0, Patch.State.STICK, Six.NONE, Double.NEGATIVE_INFINITY);
    for (int patch = 0; patch < patches().size(); patch++) {
      PatchStand stand = response.stands().get(patch);
      if (!stand.lifted()) {
        Six carried = response.carried(point, patch);
        for (Patch.State next : STATES) {
          double excess = patches().get(patch).patch().excess(next, stand, carried);
          if (excess > most.excess() + EQUAL) {
            most = new Failing(patch, next, carried, excess);
          }
        }
      }
    }
    for (int thread = 0; thread < reduced.threads().size(); thread++) {
      double capacity = reduced.threads().get(thread).capacity();
      double excess = response.pull(point, thread) / capacity - 1;
      if (excess > most.excess() + EQUAL) {
        most = new Failing(thread, Patch.State.PULLED, Six.NONE, excess);
      }
    }
    return most;
  }
}
