package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.Dimension;

/**
 * The share of a screw's thread that old tracks leave in one cortex.
 *
 * <p>Where all is known the tracks are cut out together. Where something is a range, every value in
 * it is tried; several uncertain tracks may take as much as each takes at its worst, and no less
 * than the one that takes most at its best.
 */
final class ShareLeft {

  private final Track screw;
  private final Dimension outer;
  private final Dimension cortex;

  ShareLeft(Track screw, Dimension outer, Dimension cortex) {
    this.screw = screw;
    this.outer = outer;
    this.cortex = cortex;
  }

  /** Return the share left in the near or far cortex, 0 to 1. */
  Dimension in(boolean nearCortex, List<OldTrack> older) {
    List<Meeting> exact = new ArrayList<>();
    List<Meeting> vague = new ArrayList<>();
    for (OldTrack old : older) {
      Meeting meeting = new Meeting(screw, old, outer, cortex, nearCortex);
      if (meeting.mayTouch()) {
        (meeting.isExact() ? exact : vague).add(meeting);
      }
    }
    double most = together(exact);
    if (vague.isEmpty()) {
      boolean counts = most < 1 && (cortex.assumed() || outer.assumed());
      return new Dimension(most, most, counts, "thread left");
    }
    double taken = 1 - most;
    for (Meeting meeting : vague) {
      Dimension share = meeting.share();
      taken += 1 - share.min();
      most = Math.min(most, share.max());
    }
    double least = Math.min(Math.max(0, 1 - taken), most);
    return new Dimension(least, most, taken > 0, "thread left");
  }

  private static double together(List<Meeting> exact) {
    return exact.isEmpty()
        ? 1
        : exact.get(0).sleeve().outside(exact.stream().map(Meeting::bore).toList());
  }
}
