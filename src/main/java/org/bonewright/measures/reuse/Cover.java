package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Construct;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * The stretch of bone that an implant spans: a plate from end to end, a nail or fixator from its
 * outermost bolt or pin on one side to that on the other.
 *
 * @param from level where it begins, mm
 * @param to level where it ends
 */
record Cover(Dimension from, Dimension to) {

  /** Whether a level lies within a cover. */
  enum Answer {
    YES,
    PERHAPS,
    NO
  }

  /**
   * Return what the main implants span at the end of the subject; empty where one cannot be laid.
   */
  static Optional<List<Cover>> all(Scene scene) {
    Holes holes = Holes.in(scene);
    List<Cover> all = new ArrayList<>();
    for (Construct.Held held : scene.construct().implants()) {
      if (held.implant().isMain()) {
        Optional<Cover> cover = of(scene, holes, held);
        if (cover.isEmpty()) {
          return Optional.empty();
        }
        all.add(cover.get());
      }
    }
    return Optional.of(List.copyOf(all));
  }

  /** Return what to ask where an implant cannot be laid along the bone. */
  static MissingFact missing(Scene scene) {
    return scene.missing(
        "fixation", "At which levels do the implants begin and end: place, holes and length?");
  }

  private static Optional<Cover> of(Scene scene, Holes holes, Construct.Held held) {
    List<Track> tracks =
        holes.all().stream()
            .map(OldTrack::track)
            .filter(track -> track.implant().equals(held.path()) && track.level().isPresent())
            .toList();
    if (tracks.isEmpty()) {
      return Optional.empty();
    }
    if (held.implant() instanceof Plate plate) {
      return scene.plates().stream()
          .filter(placed -> placed.plate().equals(plate))
          .findFirst()
          .flatMap(placed -> ofPlate(placed, tracks.get(0)));
    }
    Extremes levels = new Extremes();
    tracks.forEach(track -> levels.add(track.level().orElseThrow(), true));
    return Optional.of(new Cover(levels.least().orElseThrow(), levels.most().orElseThrow()));
  }

  /** Lays a plate by the level of one of its screws. */
  private static Optional<Cover> ofPlate(PlacedPlate placed, Track screw) {
    Optional<Dimension> spacing = placed.spacing();
    Optional<Integer> holes = placed.plate().holes();
    Optional<Dimension> offset = spacing.flatMap(step -> holes.map(n -> offset(placed, step, n)));
    if (spacing.isEmpty() || holes.isEmpty() || offset.isEmpty()) {
      return Optional.empty();
    }
    String name = screw.name();
    int hole = Integer.parseInt(name.substring(name.lastIndexOf(' ') + 1));
    Dimension level = screw.level().orElseThrow();
    return Optional.of(
        new Cover(
            level.minus(times(spacing.get(), hole - 1)).minus(offset.get()),
            level.plus(times(spacing.get(), holes.get() - hole)).plus(offset.get())));
  }

  /** Return how far the plate reaches beyond its last hole. */
  private static Dimension offset(PlacedPlate placed, Dimension step, int holes) {
    if (placed.plate().lengthMm().isPresent()) {
      Dimension length = placed.length().orElseThrow().minus(times(step, holes - 1));
      return new Dimension(
          Math.max(0, length.min() / 2), Math.max(0, length.max() / 2), length.assumed(), "");
    }
    double usual = placed.size().map(size -> size.endOffset()).orElse(step.middle() / 2);
    return Dimension.assumed(usual * 0.8, usual * 1.2, "usual end of the plate");
  }

  private static Dimension times(Dimension step, int by) {
    return new Dimension(step.min() * by, step.max() * by, step.assumed(), step.basis());
  }

  /** Return whether a level lies within it. */
  Answer holds(Dimension level) {
    if (from.max() <= level.min() && to.min() >= level.max()) {
      return Answer.YES;
    }
    return from.min() <= level.max() && to.max() >= level.min() ? Answer.PERHAPS : Answer.NO;
  }

  /** Return the bone in mm between the edge of a hole and the nearer end, zero within the cover. */
  Dimension gapTo(Dimension level, Dimension diameter) {
    double min = Math.max(from.min() - level.max(), level.min() - to.max()) - diameter.max() / 2;
    double max = Math.max(from.max() - level.min(), level.max() - to.min()) - diameter.min() / 2;
    return new Dimension(Math.max(0, min), Math.max(0, max), from.assumed() || level.assumed(), "");
  }
}
