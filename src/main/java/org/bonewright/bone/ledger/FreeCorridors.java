package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;

/**
 * Finds where a row of like screws, one hole of a plate apart, would find fresh bone wherever in it
 * they are put: each at least one larger diameter, edge to edge, from every old track at both
 * cortices ({@link Bite.Contact#FRESH}). Screws are taken as square to the bone and through both
 * cortices. A row that straddles an old track is left out: it would fit in one place only.
 *
 * <p>Levels are tried every half millimetre, so a corridor is right to half a millimetre at either
 * end, on the safe side. Joints, soft tissue, vessels and the shape of the plate are not looked at.
 */
public final class FreeCorridors {

  private static final double STEP = 0.5;

  private final List<OldTrack> older;
  private final boolean allTold;
  private final BoneShape bone;
  private final Row row;

  /**
   * A row of screws.
   *
   * @param screws how many, at least one
   * @param spacing mm from one to the next
   * @param diameter outer diameter of their thread, mm
   */
  public record Row(int screws, double spacing, double diameter) {
    /** Return the length in mm from the first screw to the last. */
    public double length() {
      return (screws - 1) * spacing;
    }
  }

  /**
   * Make one for the bone as it is.
   *
   * @param older every old track, in levels as read now
   * @param allTold whether these are certainly all
   */
  public FreeCorridors(List<OldTrack> older, boolean allTold, BoneShape bone, Row row) {
    this.older = List.copyOf(older);
    this.allTold = allTold;
    this.bone = bone;
    this.row = row;
  }

  /**
   * Return the corridors on a surface, the one nearest to the landmark first; none where the file
   * does not tell every old track with its level, since then no bone is known to be fresh.
   *
   * @param from level before which no screw may lie, mm
   * @param to level beyond which none may lie
   */
  public List<Corridor> on(Direction surface, double from, double to) {
    List<Corridor> found = new ArrayList<>();
    double first = Math.ceil(from / STEP) * STEP;
    int last = (int) Math.floor((to - first) / STEP);
    int begun = -1;
    for (int i = 0; i <= last + 1; i++) {
      boolean fresh = i <= last && isFresh(surface, first + i * STEP);
      if (fresh && begun < 0) {
        begun = i;
      }
      if (!fresh && begun >= 0) {
        if ((i - 1 - begun) * STEP >= row.length()) {
          found.add(new Corridor(surface, first + begun * STEP, first + (i - 1) * STEP));
        }
        begun = -1;
      }
    }
    return List.copyOf(found);
  }

  private boolean isFresh(Direction surface, double level) {
    Dimension diameter = new Dimension(row.diameter(), row.diameter(), false, "tried");
    Track tried =
        new Track(
            "tried",
            0,
            "tried",
            Track.Kind.PLATE_SCREW,
            Optional.of(new Dimension(level, level, false, "tried")),
            Optional.of(surface),
            0,
            diameter,
            row.diameter() * 0.7,
            Track.Reach.BOTH_CORTICES,
            Optional.empty());
    return new BiteMaker(tried, Optional.empty(), older, allTold, bone, true).contact()
        == Bite.Contact.FRESH;
  }
}
