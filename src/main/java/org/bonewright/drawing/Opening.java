package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Direction;

/**
 * Where a track comes through the outer surface.
 *
 * @param level mm along the bone
 * @param direction around the bone
 * @param near whether it is the entry
 * @param sure whether the track certainly comes through here
 */
record Opening(double level, Direction direction, boolean near, boolean sure) {

  /** Return the openings of a track whose level and direction are known; none of another. */
  static List<Opening> of(Track track, double outer) {
    if (track.level().isEmpty() || track.direction().isEmpty()) {
      return List.of();
    }
    double level = track.level().get().middle();
    Direction in = track.direction().get();
    List<Opening> openings = new ArrayList<>();
    openings.add(new Opening(level, in, true, true));
    if (track.mayCrossFar()) {
      double along = outer * Math.tan(Math.toRadians(track.tilt()));
      openings.add(
          new Opening(
              level + along,
              new Direction((in.degrees() + 180) % 360),
              false,
              track.reach() == Track.Reach.BOTH_CORTICES));
    }
    return openings;
  }
}
