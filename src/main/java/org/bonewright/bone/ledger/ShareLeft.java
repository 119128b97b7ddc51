package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;

/**
 * The share of a screw's thread that old tracks leave in one cortex.
 *
 * <p>Where places are known the tracks are cut out together. Where one is a range, every place in
 * it is tried; several uncertain tracks may take as much as each takes at its worst, and no less
 * than the one that takes most at its best.
 */
final class ShareLeft {

  private static final int PLACES = 16;

  private final Track screw;
  private final Dimension outer;
  private final Dimension cortex;

  ShareLeft(Track screw, Dimension outer, Dimension cortex) {
    this.screw = screw;
    this.outer = outer;
    this.cortex = cortex;
  }

  /** Return the share left in the near or far cortex, 0 to 1. */
  Dimension in(boolean nearCortex, List<Track> older) {
    List<Track> exact = new ArrayList<>();
    List<Track> vague = new ArrayList<>();
    for (Track old : older) {
      (isExact(old) ? exact : vague).add(old);
    }
    double together = screw.direction().isEmpty() ? 1 : outside(nearCortex, exact);
    double taken = 1 - together;
    double most = together;
    for (Track old : vague) {
      double[] shares = shares(nearCortex, old);
      taken += 1 - shares[0];
      most = Math.min(most, shares[1]);
    }
    boolean assumed = !vague.isEmpty() || cortex.assumed() || outer.assumed();
    return new Dimension(Math.max(0, 1 - taken), most, assumed && taken > 0, "thread left");
  }

  private boolean isExact(Track old) {
    return screw.direction().isPresent()
        && old.direction().isPresent()
        && old.reach() != Track.Reach.UNSURE
        && width(apart(old)) == 0
        && old.diameter().min() == old.diameter().max();
  }

  private static double width(double[] range) {
    return range[1] - range[0];
  }

  private double[] apart(Track old) {
    Dimension mine = screw.level().orElseThrow();
    Dimension theirs = old.level().orElseThrow();
    return new double[] {theirs.min() - mine.max(), theirs.max() - mine.min()};
  }

  private double outside(boolean nearCortex, List<Track> exact) {
    List<ThreadSleeve.Bore> bores =
        exact.stream()
            .filter(old -> crosses(old, nearCortex))
            .map(old -> bore(old, apart(old)[0], old.diameter().max()))
            .toList();
    return bores.isEmpty() ? 1 : sleeve(nearCortex).outside(bores);
  }

  /**
   * Return the least and the largest share that an uncertain track may leave. Where a surface is
   * not recorded, the worst is that the two lie side by side.
   */
  private double[] shares(boolean nearCortex, Track old) {
    double[] apart = apart(old);
    double reach = outer.max() * 2 + 20;
    double from = Math.max(apart[0], -reach);
    double to = Math.min(apart[1], reach);
    double[] found = {1, old.reach() == Track.Reach.UNSURE ? 1 : 0};
    if (from > to) {
      return new double[] {1, 1};
    }
    boolean sideBySide = screw.direction().isEmpty() || old.direction().isEmpty();
    Direction shared = screw.direction().or(old::direction).orElse(new Direction(0));
    Track tried = sideBySide ? old.from(shared) : old;
    Track mine = sideBySide ? screw.from(shared) : screw;
    ShareLeft here = new ShareLeft(mine, outer, cortex);
    for (int i = 0; i <= PLACES; i++) {
      double at = from + (to - from) * i / PLACES;
      for (double diameter : new double[] {old.diameter().min(), old.diameter().max()}) {
        double share = here.sleeve(nearCortex).outside(List.of(here.bore(tried, at, diameter)));
        found[0] = Math.min(found[0], share);
        found[1] = Math.max(found[1], share);
      }
    }
    boolean mayMiss = sideBySide || !crosses(old, nearCortex);
    return new double[] {found[0], mayMiss ? 1 : found[1]};
  }

  /**
   * A track that ends in the near cortex opens that side alone: it takes nothing from a screw that
   * comes through the other.
   */
  private boolean crosses(Track old, boolean nearCortex) {
    if (old.mayCrossFar() || screw.direction().isEmpty() || old.direction().isEmpty()) {
      return true;
    }
    boolean sameSide = screw.direction().get().angleTo(old.direction().get()) < 90;
    return sameSide == nearCortex;
  }

  private ThreadSleeve sleeve(boolean nearCortex) {
    double slope = Math.cos(Math.toRadians(screw.tilt()));
    double wall = Math.min(cortex.middle(), outer.middle() / 2);
    double from = nearCortex ? 0 : (outer.middle() - wall) / slope;
    return new ThreadSleeve(
        Line.into(0, screw.direction().orElseThrow(), screw.tilt(), outer.middle()),
        from,
        wall / slope,
        screw.core(),
        screw.diameter().middle());
  }

  private ThreadSleeve.Bore bore(Track old, double apart, double diameter) {
    return new ThreadSleeve.Bore(
        Line.into(apart, old.direction().orElseThrow(), old.tilt(), outer.middle()), diameter);
  }
}
