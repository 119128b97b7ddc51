package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;

/**
 * A place where a track comes through the outer surface of the bone.
 *
 * @param level mm along the bone
 * @param direction around the bone; empty where it was not recorded
 * @param certain whether the track certainly comes out here: false for the far end of one that may
 *     cross one cortex or both
 */
public record Opening(Dimension level, Optional<Direction> direction, boolean certain) {

  /**
   * Return where a track opens: its entry, and its exit where it crosses the far cortex or may;
   * nothing where its level is not known.
   *
   * @param outer outer diameter of the bone there, mm
   */
  public static List<Opening> of(Track track, Dimension outer) {
    List<Opening> ends = ends(track, outer);
    List<Opening> open = new ArrayList<>();
    if (!ends.isEmpty()) {
      open.add(ends.get(0));
      if (track.mayCrossFar()) {
        boolean both = track.reach() == Track.Reach.BOTH_CORTICES;
        open.add(new Opening(ends.get(1).level(), ends.get(1).direction(), both));
      }
    }
    return open;
  }

  /** Return where the axis of a track cuts the outer surface, whether or not it gets so far. */
  static List<Opening> ends(Track track, Dimension outer) {
    if (track.level().isEmpty()) {
      return List.of();
    }
    double slope = Math.tan(Math.toRadians(track.tilt()));
    double one = outer.min() * slope;
    double two = outer.max() * slope;
    Dimension entry = track.level().get();
    Dimension across =
        new Dimension(Math.min(one, two), Math.max(one, two), outer.assumed(), entry.basis());
    return List.of(
        new Opening(entry, track.direction(), true),
        new Opening(
            slope == 0 ? entry : entry.plus(across),
            track.direction().map(in -> new Direction((in.degrees() + 180) % 360)),
            true));
  }

  /** Return the distance along the bone in mm, from zero. */
  public Dimension along(Opening other) {
    double from = level.min() - other.level.max();
    double to = level.max() - other.level.min();
    double least = from <= 0 && to >= 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
    return new Dimension(
        least,
        Math.max(Math.abs(from), Math.abs(to)),
        level.assumed() || other.level.assumed(),
        "along the bone");
  }

  /**
   * Return the distance across the bone in mm, straight through it; anything up to its outer
   * diameter where a direction is not known.
   */
  public Dimension across(Opening other, Dimension outer) {
    if (direction.isEmpty() || other.direction.isEmpty()) {
      return Dimension.assumed(0, outer.max(), "surface not recorded");
    }
    double half = Math.sin(Math.toRadians(direction.get().angleTo(other.direction.get())) / 2);
    return new Dimension(
        outer.min() * half, outer.max() * half, outer.assumed() && half > 0, "across the bone");
  }

  /** Return the distance of the two middles in mm: root of along squared plus across squared. */
  public Dimension centres(Opening other, Dimension outer) {
    Dimension along = along(other);
    Dimension across = across(other, outer);
    return new Dimension(
        Math.hypot(along.min(), across.min()),
        Math.hypot(along.max(), across.max()),
        along.assumed() || across.assumed(),
        across.basis());
  }
}
