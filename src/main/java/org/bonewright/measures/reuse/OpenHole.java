package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Scene;

/**
 * A hole that the subject opens and leaves empty.
 *
 * @param track the hole
 * @param certain whether it is certainly left empty
 * @param covered whether a plate, nail or fixator spans it
 * @param ratio diameter over the outer diameter of the bone there
 * @param toEnd bone between its edge and the nearest end of an implant, in outer diameters of the
 *     bone; empty where no implant holds the bone
 */
record OpenHole(
    Track track,
    boolean certain,
    Cover.Answer covered,
    Dimension ratio,
    Optional<Dimension> toEnd) {

  /** Return the open holes; empty where an implant cannot be laid along the bone. */
  static Optional<List<OpenHole>> all(Scene scene) {
    return scene.once("open-holes", () -> find(scene));
  }

  private static Optional<List<OpenHole>> find(Scene scene) {
    Holes holes = Holes.in(scene);
    List<OldTrack> opened = holes.opened();
    if (opened.isEmpty()) {
      return Optional.of(List.of());
    }
    return Cover.all(scene)
        .map(
            covers -> {
              List<OpenHole> all = new ArrayList<>();
              for (OldTrack hole : opened) {
                all.add(of(holes, hole, covers));
              }
              return List.copyOf(all);
            });
  }

  private static OpenHole of(Holes holes, OldTrack hole, List<Cover> covers) {
    Track track = hole.track();
    Dimension level = track.level().orElseThrow();
    Cover.Answer covered = Cover.Answer.NO;
    Extremes gaps = new Extremes();
    for (Cover cover : covers) {
      Cover.Answer here = cover.holds(level);
      covered = here.compareTo(covered) < 0 ? here : covered;
      gaps.add(cover.gapTo(level, track.diameter()), true);
    }
    return new OpenHole(
        track,
        holes.refill(hole) == Holes.Refill.NO,
        covered,
        holes.ratio(track),
        gaps.least().map(gap -> gap.over(holes.outer(track))));
  }

  /** Return whether it certainly is left empty, outside of every implant. */
  boolean certainlyBeyond() {
    return certain && covered == Cover.Answer.NO;
  }

  /** Return whether it may be left empty, outside of every implant. */
  boolean maybeBeyond() {
    return covered != Cover.Answer.YES;
  }
}
