package org.bonewright.bone.ledger;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;

/**
 * What a new screw finds in the bone.
 *
 * @param track the screw's own track
 * @param near share of its thread in the near cortex that lies in bone no old track has taken, 0 to
 *     1
 * @param far the same in the far cortex; empty where it certainly does not cross it
 * @param clearance bone in mm left between its hole and the nearest old one, edge to edge on the
 *     outer surface of either cortex, below zero where they overlap; empty where the place of no
 *     old track is known
 * @param contact the same in a word
 * @param closest names of the old tracks nearer than one diameter, nearest first
 * @param stepUp how much thicker it is than the old track that it uses again, or may use again, mm;
 *     empty where it uses none or that one is not known
 */
public record Bite(
    Track track,
    Dimension near,
    Optional<Dimension> far,
    Optional<Dimension> clearance,
    Contact contact,
    List<String> closest,
    Optional<Dimension> stepUp) {

  /** What a level read off a film may err by, mm; our convention. */
  public static final double FILM_ERROR = 1;

  /** How a new screw stands to old tracks. */
  public enum Contact {
    /** At least one larger diameter of bone between it and every old track. */
    FRESH,
    /** Less bone than that, but no overlap. */
    NEAR,
    /** It overlaps an old track. */
    OVERLAPPED,
    /** It goes into an old track again. */
    REUSED,
    /** The file does not tell. */
    UNSURE
  }
}
