package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Six;

/**
 * Raises a load from nothing to its full size and lets the patches under pressed screws give way in
 * the order in which they reach what they can bear: tilt, slip, lift.
 */
final class LoadPath {

  private static final int HALVINGS = 40;
  private static final double START = 1e-6;

  private final FixedBone fixed;
  private final Prestress prestress;
  private final Optional<Response> whole;

  LoadPath(FixedBone fixed, Prestress prestress) {
    this.fixed = fixed;
    this.prestress = prestress;
    this.whole = response(Map.of());
  }

  private Optional<Response> response(Map<Integer, PatchStand> stands) {
    return Joined.of(fixed, stands, false)
        .map(joined -> new Response(fixed, joined, stands, prestress));
  }

  /** Return whether nothing can move without resistance while every patch is whole. */
  boolean holds() {
    return whole.isPresent();
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
   * @param response how the bone answers in its last state
   * @param stands how the patches stand at the end, by index of the screw
   * @param answer to the share of the load that was reached
   * @param reached the share of the load that was reached; 1 is all of it
   * @param events what gave way, in order
   */
  record End(
      Response response,
      Map<Integer, PatchStand> stands,
      Response.Answer answer,
      double reached,
      List<Event> events) {}

  /**
   * Raise a load.
   *
   * @return empty if something could move without resistance at once, or bone ends found no rest
   */
  Optional<End> raise(Load load) {
    Map<Integer, PatchStand> stands = new TreeMap<>();
    List<Event> events = new ArrayList<>();
    double from = 0;
    Optional<End> last = Optional.empty();
    while (true) {
      Optional<Response> response = stands.isEmpty() ? whole : response(stands);
      if (response.isEmpty()) {
        return last; // nothing resists any more: the load reached is what was held
      }
      Optional<Response.Answer> all = response.get().to(load, 1);
      if (all.isEmpty()) {
        return Optional.empty();
      }
      if (worst(response.get(), all.get(), stands).isEmpty()) {
        return Optional.of(
            new End(response.get(), Map.copyOf(stands), all.get(), 1, List.copyOf(events)));
      }
      double share = first(response.get(), load, from, stands);
      Optional<Response.Answer> there = response.get().to(load, share);
      Optional<Failing> failing = there.flatMap(answer -> worst(response.get(), answer, stands));
      if (there.isEmpty() || failing.isEmpty()) {
        return Optional.empty();
      }
      events.add(new Event(share, failing.get().screw(), failing.get().what()));
      last =
          Optional.of(
              new End(response.get(), Map.copyOf(stands), there.get(), share, List.copyOf(events)));
      stands.put(failing.get().screw(), after(stands, failing.get()));
      from = share;
    }
  }

  private static PatchStand after(Map<Integer, PatchStand> stands, Failing failing) {
    PatchStand before = stands.getOrDefault(failing.screw(), PatchStand.WHOLE);
    return switch (failing.what()) {
      case TILT -> before.afterTilt(failing.carried());
      case SLIP -> before.afterSlip(failing.carried());
      case LIFTED -> before.afterLift(failing.carried());
      case STICK -> before;
    };
  }

  /** Return the smallest share of the load, from one that was borne, at which a patch gives way. */
  private double first(Response response, Load load, double from, Map<Integer, PatchStand> stands) {
    double low = from;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean gives =
          response
              .to(load, middle)
              .map(answer -> worst(response, answer, stands).isPresent())
              .orElse(true);
      if (gives) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * A patch that carries more than it can.
   *
   * @param screw index of its screw
   * @param what it does next
   * @param carried what it carries: six numbers
   * @param excess by how much of what it can bear
   */
  private record Failing(int screw, Patch.State what, Six carried, double excess) {}

  private Optional<Failing> worst(
      Response response, Response.Answer answer, Map<Integer, PatchStand> stands) {
    List<Failing> failing = new ArrayList<>();
    response
        .patches(answer)
        .forEach(
            (screw, carried) -> {
              PatchStand stand = stands.getOrDefault(screw, PatchStand.WHOLE);
              if (fixed.screws().get(screw).head() instanceof Head.Pressed pressed) {
                Patch patch = new Patch(pressed, fixed.shaft().material());
                add(failing, screw, patch, stand, carried);
              }
            });
    return failing.stream()
        .filter(f -> f.excess() > START)
        .max(Comparator.comparingDouble(Failing::excess));
  }

  private static void add(
      List<Failing> failing, int screw, Patch patch, PatchStand stand, Six carried) {
    double apart = carried.along();
    double force = patch.head().force();
    failing.add(new Failing(screw, Patch.State.LIFTED, carried, apart / force - 1));
    if (!stand.slid()) {
      double across = Math.hypot(carried.away(), carried.across());
      failing.add(
          new Failing(screw, Patch.State.SLIP, carried, over(across, patch.slips(apart), force)));
    }
    if (!stand.tilted()) {
      double tilting = Math.hypot(carried.aboutAway(), carried.aboutAcross());
      double scale = force * patch.head().radius() / 4;
      failing.add(
          new Failing(screw, Patch.State.TILT, carried, over(tilting, patch.tilts(apart), scale)));
    }
  }

  private static double over(double carried, double bears, double scale) {
    return (carried - bears) / scale;
  }
}
