package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.ScrewRow;

/** Works out what one new screw finds. */
final class BiteMaker {

  /** Two axes this close at both cortices count as one hole, mm; our convention. */
  private static final double SAME_HOLE = 0.5;

  private static final Dimension ALL = new Dimension(1, 1, false, "bone never drilled");
  private static final Dimension UNKNOWN_SHARE =
      Dimension.assumed(0, 1, "place of old tracks not known");

  private final Track screw;
  private final Optional<ScrewRow.Track> stated;
  private final List<OldTrack> older;
  private final boolean allTold;
  private final BoneShape bone;
  private final boolean levelsOfBone;

  /**
   * Make one.
   *
   * @param levelsOfBone whether levels are those of the bone; else, told from the zone, they do not
   *     tell where along the bone the screw lies, and so not how thick the bone is there
   */
  BiteMaker(
      Track screw,
      Optional<ScrewRow.Track> stated,
      List<OldTrack> older,
      boolean allTold,
      BoneShape bone,
      boolean levelsOfBone) {
    this.screw = screw;
    this.stated = stated;
    this.older = older;
    this.allTold = allTold;
    this.bone = bone;
    this.levelsOfBone = levelsOfBone;
  }

  /** Return how the screw stands to the old tracks, without working out its thread. */
  Bite.Contact meets() {
    List<Spacing> spacings = spacings();
    return contact(spacings, clearance(spacings));
  }

  private List<Spacing> spacings() {
    Dimension here = outer();
    return older.stream()
        .flatMap(old -> Spacing.between(screw, old.track(), here).stream())
        .sorted(Comparator.comparingDouble(s -> s.clearance().min()))
        .toList();
  }

  Bite bite() {
    List<Spacing> spacings = spacings();
    Optional<Dimension> clearance = clearance(spacings);
    Bite.Contact contact = contact(spacings, clearance);
    List<String> closest =
        spacings.stream()
            .filter(spacing -> spacing.clearance().min() < spacing.larger())
            .map(spacing -> spacing.old().name())
            .toList();
    return new Bite(
        screw,
        share(true, contact),
        screw.mayCrossFar() ? Optional.of(share(false, contact)) : Optional.empty(),
        clearance,
        contact,
        closest,
        stepUp(spacings, contact));
  }

  private Dimension outer() {
    return screw
        .level()
        .filter(level -> levelsOfBone)
        .map(level -> bone.outerAt(level.middle()))
        .orElseGet(bone::outerAtShaft);
  }

  private Optional<Dimension> clearance(List<Spacing> spacings) {
    if (spacings.isEmpty()) {
      return Optional.empty();
    }
    double min = spacings.get(0).clearance().min();
    double max = spacings.stream().mapToDouble(s -> s.clearance().max()).min().orElseThrow();
    boolean assumed = spacings.stream().anyMatch(s -> s.clearance().assumed());
    return Optional.of(new Dimension(min, max, assumed, "edge to edge on the outer surface"));
  }

  private Bite.Contact contact(List<Spacing> spacings, Optional<Dimension> clearance) {
    if (stated.equals(Optional.of(ScrewRow.Track.OLD_HOLE))
        || stated.equals(Optional.of(ScrewRow.Track.OLD_HOLE_LARGER))) {
      return Bite.Contact.REUSED;
    }
    boolean saidFresh = stated.equals(Optional.of(ScrewRow.Track.FRESH));
    boolean allMet = allTold && spacings.size() == older.size();
    if (spacings.isEmpty()) {
      return allMet ? Bite.Contact.FRESH : Bite.Contact.UNSURE;
    }
    if (!saidFresh && spacings.stream().anyMatch(Spacing::sameHole)) {
      return Bite.Contact.REUSED;
    }
    if (!saidFresh && clearance.orElseThrow().max() < 0) {
      return Bite.Contact.OVERLAPPED;
    }
    boolean clear = saidFresh || clearance.orElseThrow().min() >= 0;
    if (!clear || (!allMet && !saidFresh)) {
      return Bite.Contact.UNSURE;
    }
    if (allMet && spacings.stream().allMatch(s -> s.clearance().min() >= s.larger())) {
      return Bite.Contact.FRESH;
    }
    return spacings.stream().anyMatch(s -> s.clearance().max() < s.larger())
        ? Bite.Contact.NEAR
        : Bite.Contact.UNSURE;
  }

  private Optional<Dimension> stepUp(List<Spacing> spacings, Bite.Contact contact) {
    return contact == Bite.Contact.REUSED && !spacings.isEmpty()
        ? Optional.of(screw.diameter().minus(spacings.get(0).old().diameter()))
        : Optional.empty();
  }

  /** Return the share of the thread that is left in one cortex. */
  private Dimension share(boolean nearCortex, Bite.Contact contact) {
    if (stated.equals(Optional.of(ScrewRow.Track.FRESH)) || contact == Bite.Contact.FRESH) {
      return ALL;
    }
    boolean told =
        allTold
            && screw.level().isPresent()
            && older.stream().allMatch(old -> old.track().level().isPresent());
    Dimension left =
        screw.level().isPresent()
            ? new ShareLeft(screw, outer(), cortex()).in(nearCortex, tracks())
            : UNKNOWN_SHARE;
    return told ? left : Dimension.assumed(0, left.max(), UNKNOWN_SHARE.basis());
  }

  private Dimension cortex() {
    return bone.cortexAt(
        levelsOfBone ? screw.level().orElseThrow().middle() : bone.length().middle() / 2);
  }

  private List<Track> tracks() {
    List<Track> placed = new ArrayList<>();
    for (OldTrack old : older) {
      if (old.track().level().isPresent()) {
        placed.add(old.track());
      }
    }
    return placed;
  }

  /**
   * How far a new screw keeps from one old track.
   *
   * @param old the old track
   * @param centres distance of their middles on the outer surface, mm, at the cortex where they
   *     come closer
   * @param clearance the same from edge to edge, below zero where they overlap
   * @param larger the larger of the two diameters, mm
   * @param sameHole whether it certainly goes into the old track again
   */
  private record Spacing(
      Track old, Dimension centres, Dimension clearance, double larger, boolean sameHole) {

    static Optional<Spacing> between(Track screw, Track old, Dimension outer) {
      if (screw.level().isEmpty() || old.level().isEmpty()) {
        return Optional.empty();
      }
      Dimension centres = centres(screw, old, outer);
      double radii = (screw.diameter().max() + old.diameter().max()) / 2;
      double least = (screw.diameter().min() + old.diameter().min()) / 2;
      Dimension clearance =
          new Dimension(
              centres.min() - radii, centres.max() - least, centres.assumed(), "edge to edge");
      double larger = Math.max(screw.diameter().max(), old.diameter().max());
      return Optional.of(new Spacing(old, centres, clearance, larger, sameHole(screw, old, outer)));
    }

    /** Return the distance at the openings that come closest; at most that of certain ones. */
    private static Dimension centres(Track screw, Track old, Dimension outer) {
      Dimension best = new Dimension(1e6, 1e6, outer.assumed(), "on the outer surface");
      for (Opening mine : Opening.of(screw, outer)) {
        for (Opening theirs : Opening.of(old, outer)) {
          Dimension here = mine.centres(theirs, outer);
          boolean certain = mine.certain() && theirs.certain();
          best =
              new Dimension(
                  Math.min(best.min(), here.min()),
                  certain ? Math.min(best.max(), here.max()) : best.max(),
                  best.assumed() || here.assumed(),
                  best.basis());
        }
      }
      return best;
    }

    /** Return whether the screw certainly enters where the old track opens, along the same axis. */
    private static boolean sameHole(Track screw, Track old, Dimension outer) {
      List<Opening> mine = Opening.ends(screw, outer);
      List<Opening> theirs = Opening.ends(old, outer);
      boolean entered =
          Opening.of(old, outer).stream()
              .filter(Opening::certain)
              .anyMatch(open -> together(mine.get(0), open, outer));
      return entered
          && ((together(mine.get(0), theirs.get(0), outer)
                  && together(mine.get(1), theirs.get(1), outer))
              || (together(mine.get(0), theirs.get(1), outer)
                  && together(mine.get(1), theirs.get(0), outer)));
    }

    private static boolean together(Opening a, Opening b, Dimension outer) {
      return a.centres(b, outer).max() <= SAME_HOLE;
    }
  }
}
