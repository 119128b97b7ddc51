package org.bonewright.bone.ledger;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlateSize;
import org.bonewright.casefile.ScrewRow;

/** Works out what one new screw finds. */
final class BiteMaker {

  private static final Dimension ALL = new Dimension(1, 1, false, "bone never drilled");
  private static final Dimension UNKNOWN_SHARE =
      Dimension.assumed(0, 1, "place of old tracks not known");

  private final Track screw;
  private final Optional<ScrewRow.Track> stated;
  private final List<OldTrack> older;
  private final boolean allTold;
  private final BoneShape bone;
  private final boolean levelsOfBone;
  private final List<Spacing> spacings;

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
    this.spacings =
        older.stream()
            .flatMap(old -> Spacing.between(screw, old, outer()).stream())
            .sorted(Comparator.comparingDouble(s -> s.clearance().min()))
            .toList();
  }

  Bite bite() {
    List<String> closest =
        spacings.stream()
            .filter(spacing -> spacing.clearance().min() < spacing.larger().max())
            .map(spacing -> spacing.old().track().name())
            .toList();
    Bite.Contact contact = contact();
    return new Bite(
        screw,
        share(true),
        screw.mayCrossFar() ? Optional.of(share(false)) : Optional.empty(),
        clearance(),
        contact,
        closest,
        stepUp(contact));
  }

  private Dimension outer() {
    return bone.outerAt(screw.level().filter(level -> levelsOfBone));
  }

  private boolean allMet() {
    return allTold && spacings.size() == older.size();
  }

  private boolean said(ScrewRow.Track track) {
    return stated.equals(Optional.of(track));
  }

  /** An old track whose place is not known may lie anywhere, and one that may be gone nowhere. */
  private Optional<Dimension> clearance() {
    if (spacings.isEmpty()) {
      return Optional.empty();
    }
    double min = spacings.get(0).clearance().min();
    double max =
        spacings.stream()
            .filter(s -> !s.old().mayBeGone())
            .mapToDouble(s -> s.clearance().max())
            .min()
            .orElseGet(
                () -> spacings.stream().mapToDouble(s -> s.clearance().max()).max().orElse(0));
    double least =
        allMet() ? min : Math.min(min, -(screw.diameter().max() + PlateSize.THICKEST_SCREW) / 2);
    boolean assumed = !allMet() || spacings.stream().anyMatch(s -> s.clearance().assumed());
    return Optional.of(new Dimension(least, max, assumed, "edge to edge on the outer surface"));
  }

  /** Return how the screw stands to the old tracks, without working out its thread. */
  Bite.Contact contact() {
    if (said(ScrewRow.Track.OLD_HOLE) || said(ScrewRow.Track.OLD_HOLE_LARGER)) {
      return Bite.Contact.REUSED;
    }
    boolean saidFresh = isSaidFresh();
    if (!saidFresh) {
      if (spacings.stream().anyMatch(Spacing::same)) {
        return Bite.Contact.REUSED;
      }
      if (!allMet() || spacings.stream().anyMatch(Spacing::maybeSame)) {
        return Bite.Contact.UNSURE;
      }
      if (anyCertainly(s -> s.clearance().max() < 0)) {
        return Bite.Contact.OVERLAPPED;
      }
      if (spacings.stream().anyMatch(s -> s.clearance().min() < 0)) {
        return Bite.Contact.UNSURE;
      }
    }
    if (allMet() && spacings.stream().allMatch(s -> s.clearance().min() >= s.larger().max())) {
      return Bite.Contact.FRESH;
    }
    return anyCertainly(s -> s.clearance().max() < s.larger().min())
        ? Bite.Contact.NEAR
        : Bite.Contact.UNSURE;
  }

  /**
   * Return whether the file says that the screw bites fresh bone, and its levels do not certainly
   * contradict that by more than films can err: then the levels count.
   */
  private boolean isSaidFresh() {
    return said(ScrewRow.Track.FRESH) && !anyCertainly(s -> s.clearance().max() < -Bite.FILM_ERROR);
  }

  private boolean anyCertainly(Predicate<Spacing> isSo) {
    return spacings.stream().filter(s -> !s.old().mayBeGone()).anyMatch(isSo);
  }

  /** The thickest old track in the hole counts; where several may be meant, any of them. */
  private Optional<Dimension> stepUp(Bite.Contact contact) {
    List<Spacing> meant = spacings.stream().filter(Spacing::maybeSame).toList();
    if (meant.isEmpty() && contact == Bite.Contact.REUSED) {
      meant = spacings.stream().limit(1).toList();
    }
    boolean mayBeReused = contact == Bite.Contact.REUSED || contact == Bite.Contact.UNSURE;
    if (meant.isEmpty() || !mayBeReused || isSaidFresh()) {
      return Optional.empty();
    }
    double thickest = meant.stream().mapToDouble(s -> diameter(s).max()).max().orElseThrow();
    double thinnest =
        meant.stream()
            .filter(Spacing::same)
            .mapToDouble(s -> diameter(s).min())
            .max()
            .orElse(meant.stream().mapToDouble(s -> diameter(s).min()).min().orElseThrow());
    boolean assumed =
        screw.diameter().assumed() || meant.stream().anyMatch(s -> diameter(s).assumed());
    return Optional.of(
        new Dimension(
            screw.diameter().min() - thickest,
            screw.diameter().max() - thinnest,
            assumed,
            "diameter less that of the old track"));
  }

  private static Dimension diameter(Spacing spacing) {
    return spacing.old().track().diameter();
  }

  /** The middle half of the bone, where levels do not tell where along it the screw lies. */
  private Dimension shaft() {
    Dimension length = bone.length();
    return Dimension.assumed(length.min() / 4, length.max() * 3 / 4, "somewhere in the shaft");
  }

  /** Return the share of the thread that is left in one cortex. */
  private Dimension share(boolean nearCortex) {
    if (isSaidFresh() || (allTold && older.isEmpty())) {
      return ALL;
    }
    if (screw.level().isEmpty()) {
      return UNKNOWN_SHARE;
    }
    List<OldTrack> placed = spacings.stream().map(Spacing::old).toList();
    Dimension cortex = bone.cortexAt(levelsOfBone ? screw.level().get() : shaft());
    Dimension left = new ShareLeft(screw, outer(), cortex).in(nearCortex, placed);
    return allMet() ? left : Dimension.assumed(0, left.max(), UNKNOWN_SHARE.basis());
  }
}
