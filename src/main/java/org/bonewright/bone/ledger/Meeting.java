package org.bonewright.bone.ledger;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.bonewright.bone.Dimension;

/**
 * One old track beside a new screw in one cortex.
 *
 * @param screw the new screw; its level is known
 * @param old the old track; its level is known
 * @param outer outer diameter of the bone, mm
 * @param cortex thickness of the cortex, mm
 * @param nearCortex whether the cortex is the one that the screw comes through first
 */
record Meeting(Track screw, OldTrack old, Dimension outer, Dimension cortex, boolean nearCortex) {

  /** Steps along the bone, mm, and what a share may miss between them. */
  private static final double FINE = 0.1;

  private static final double COARSE = 0.25;
  private static final double FINE_MISSES = 0.002;
  private static final double COARSE_MISSES = 0.03;

  /** Return whether the two can come into contact in this cortex at all. */
  boolean mayTouch() {
    if (certainlyElsewhere()) {
      return false;
    }
    double inner = outer.min() / 2 - Math.min(cortex.max(), outer.min() / 2);
    double aside = told() ? inner * Math.abs(Math.sin(Math.toRadians(turn()))) : 0;
    double slope = Math.cos(Math.toRadians(track().tilt()));
    Dimension along = along().plus(lean(track().tilt())).minus(lean(screw.tilt()));
    double between =
        along.min() <= 0 && along.max() >= 0
            ? 0
            : Math.min(Math.abs(along.min()), Math.abs(along.max()));
    double radii = (screw.diameter().max() + track().diameter().max()) / 2;
    return Math.hypot(aside, slope * between) < radii;
  }

  /** Return whether everything that the share depends on is known. */
  boolean isExact() {
    return told()
        && !old.mayBeGone()
        && certainlyHere()
        && isPoint(along())
        && isPoint(screw.diameter())
        && isPoint(track().diameter())
        && (sideBySide() || (isPoint(outer) && isPoint(cortex)));
  }

  /** Return the share that the old track may leave where not everything is known. */
  Dimension share() {
    if (!told() || !isPoint(screw.diameter())) {
      return Dimension.assumed(0, 1, "surface or diameter not recorded");
    }
    double misses = sideBySide() ? FINE_MISSES : COARSE_MISSES;
    double min = 1;
    double max = 0;
    for (double width : values(outer)) {
      for (double wall : values(cortex)) {
        ThreadSleeve sleeve = sleeve(width, wall);
        for (double at : levels()) {
          min = Math.min(min, left(sleeve, bore(at, track().diameter().max(), width)));
          max = Math.max(max, left(sleeve, bore(at, track().diameter().min(), width)));
        }
      }
    }
    boolean mayMiss = old.mayBeGone() || !certainlyHere() || beyondReach();
    return Dimension.assumed(
        Math.max(0, min - misses), mayMiss ? 1 : Math.min(1, max + misses), "place is a range");
  }

  private double left(ThreadSleeve sleeve, ThreadSleeve.Bore bore) {
    return sideBySide() ? sleeve.outside(List.of(bore)) : sleeve.roughlyOutside(List.of(bore));
  }

  /** Return the thread in this cortex, where its dimensions are known or do not matter. */
  ThreadSleeve sleeve() {
    return sleeve(outer.middle(), cortex.middle());
  }

  /** Return the old track, where it is known. */
  ThreadSleeve.Bore bore() {
    return bore(along().middle(), track().diameter().max(), outer.middle());
  }

  private ThreadSleeve sleeve(double width, double thickness) {
    double slope = Math.cos(Math.toRadians(screw.tilt()));
    double wall = Math.min(thickness, width / 2);
    return new ThreadSleeve(
        Line.into(0, screw.direction().orElseThrow(), screw.tilt(), width),
        nearCortex ? 0 : (width - wall) / slope,
        wall / slope,
        screw.core(),
        screw.diameter().middle());
  }

  private ThreadSleeve.Bore bore(double at, double diameter, double width) {
    return new ThreadSleeve.Bore(
        Line.into(at, track().direction().orElseThrow(), track().tilt(), width), diameter);
  }

  private Track track() {
    return old.track();
  }

  private boolean told() {
    return screw.direction().isPresent() && track().direction().isPresent();
  }

  /** Return the angle between the entries, degrees. */
  private double turn() {
    return screw.direction().orElseThrow().angleTo(track().direction().orElseThrow());
  }

  private boolean sideBySide() {
    return screw.tilt() == 0 && track().tilt() == 0 && (turn() == 0 || turn() == 180);
  }

  /** A track opens the side that it enters in any case, the other one if it crosses both. */
  private boolean certainlyHere() {
    return told() && (track().reach() == Track.Reach.BOTH_CORTICES || entersHere());
  }

  private boolean certainlyElsewhere() {
    return told() && track().reach() == Track.Reach.NEAR_CORTEX && !entersHere();
  }

  private boolean entersHere() {
    return (turn() < 90) == nearCortex;
  }

  /** Return how far along the bone the old track enters from the screw, mm. */
  private Dimension along() {
    return track().level().orElseThrow().minus(screw.level().orElseThrow());
  }

  /** Return how far along the bone a track may lead on its way through it, mm. */
  private Dimension lean(double tilt) {
    double across = outer.max() * Math.tan(Math.toRadians(tilt));
    return new Dimension(Math.min(0, across), Math.max(0, across), false, "");
  }

  /** Farther apart than this along the bone they cannot touch, mm. */
  private double reach() {
    double radii = (screw.diameter().max() + track().diameter().max()) / 2;
    double slope = Math.cos(Math.toRadians(track().tilt()));
    Dimension lean = lean(track().tilt()).minus(lean(screw.tilt()));
    return radii / slope + lean.max() - lean.min();
  }

  private boolean beyondReach() {
    return along().min() < -reach() || along().max() > reach();
  }

  private double[] levels() {
    double from = Math.max(along().min(), -reach());
    double to = Math.min(along().max(), reach());
    int steps = (int) Math.ceil((to - from) / (sideBySide() ? FINE : COARSE));
    DoubleStream tried =
        IntStream.rangeClosed(0, Math.max(1, steps))
            .mapToDouble(i -> from + (to - from) * i / Math.max(1, steps));
    // on one axis the share has a corner
    return from < 0 && to > 0
        ? DoubleStream.concat(tried, DoubleStream.of(0)).toArray()
        : tried.toArray();
  }

  private double[] values(Dimension range) {
    return sideBySide() || isPoint(range)
        ? new double[] {range.middle()}
        : DoubleStream.of(range.min(), range.middle(), range.max()).toArray();
  }

  private static boolean isPoint(Dimension range) {
    return range.min() == range.max();
  }
}
