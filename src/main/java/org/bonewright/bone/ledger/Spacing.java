package org.bonewright.bone.ledger;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.bonewright.bone.Dimension;

/**
 * How far a new screw keeps from one old track.
 *
 * @param old the old track
 * @param clearance bone between them on the outer surface, edge to edge, at the cortex where they
 *     come closer, mm; below zero where they overlap
 * @param larger the larger of the two diameters, mm
 * @param same whether the screw certainly enters where the old track opens, along the same axis
 * @param maybeSame whether it may do so
 */
record Spacing(
    OldTrack old, Dimension clearance, Dimension larger, boolean same, boolean maybeSame) {

  /** Two axes this close at both cortices count as one hole, mm; our convention. */
  private static final double SAME_HOLE = 0.5;

  /** Return the spacing; nothing where either level is unknown. */
  static Optional<Spacing> between(Track screw, OldTrack old, Dimension outer) {
    Track track = old.track();
    if (screw.level().isEmpty() || track.level().isEmpty()) {
      return Optional.empty();
    }
    Dimension centres = centres(screw, track, outer);
    Dimension mine = screw.diameter();
    Dimension other = track.diameter();
    boolean same =
        entersAlong(screw, track, outer, true, (a, b) -> a.centres(b, outer).max() <= SAME_HOLE);
    boolean maybeSame =
        entersAlong(screw, track, outer, false, (a, b) -> a.centres(b, outer).min() <= SAME_HOLE);
    return Optional.of(
        new Spacing(
            old,
            new Dimension(
                centres.min() - (mine.max() + other.max()) / 2,
                centres.max() - (mine.min() + other.min()) / 2,
                centres.assumed(),
                "edge to edge on the outer surface"),
            mine.atLeast(other),
            same && !old.mayBeGone(),
            maybeSame));
  }

  /** Return the distance at the openings that come closest; at most that of certain ones. */
  private static Dimension centres(Track screw, Track old, Dimension outer) {
    double min = Double.POSITIVE_INFINITY;
    double max = Double.POSITIVE_INFINITY;
    boolean assumed = false;
    for (Opening mine : Opening.of(screw, outer)) {
      for (Opening theirs : Opening.of(old, outer)) {
        Dimension here = mine.centres(theirs, outer);
        min = Math.min(min, here.min());
        max = mine.certain() && theirs.certain() ? Math.min(max, here.max()) : max;
        assumed |= here.assumed();
      }
    }
    return new Dimension(min, max, assumed, "on the outer surface");
  }

  private static boolean entersAlong(
      Track screw,
      Track old,
      Dimension outer,
      boolean certainly,
      BiPredicate<Opening, Opening> together) {
    List<Opening> mine = Opening.ends(screw, outer);
    List<Opening> theirs = Opening.ends(old, outer);
    boolean entered =
        Opening.of(old, outer).stream()
            .filter(open -> open.certain() || !certainly)
            .anyMatch(open -> together.test(mine.get(0), open));
    boolean alike =
        together.test(mine.get(0), theirs.get(0)) && together.test(mine.get(1), theirs.get(1));
    boolean opposed =
        together.test(mine.get(0), theirs.get(1)) && together.test(mine.get(1), theirs.get(0));
    return entered && (alike || opposed);
  }
}
