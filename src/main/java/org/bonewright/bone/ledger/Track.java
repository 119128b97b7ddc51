package org.bonewright.bone.ledger;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ScrewRow;

/**
 * The way of one screw, bolt or pin through the bone.
 *
 * @param name which one, such as {@code op-1/plate-1 hole 3}
 * @param round number of the operation that drilled it, from 0
 * @param implant the implant that it belongs to, such as {@code op-1/plate-1}
 * @param kind what made it
 * @param level mm of its entry, as read at that operation; empty where it cannot be told
 * @param direction where it enters around the bone; empty where it was not recorded
 * @param tilt tilt along the bone in degrees, positive when the tip points away from the landmark
 * @param diameter outer diameter of the thread in mm
 * @param core core diameter in mm
 * @param reach which cortices it crosses
 * @param state what became of the metal, where it was recorded
 */
public record Track(
    String name,
    int round,
    String implant,
    Kind kind,
    Optional<Dimension> level,
    Optional<Direction> direction,
    double tilt,
    Dimension diameter,
    double core,
    Reach reach,
    Optional<ScrewRow.State> state) {

  /** What made a track. */
  public enum Kind {
    PLATE_SCREW,
    LOCKING_PLATE_SCREW,
    LAG_SCREW,
    BOLT,
    PIN
  }

  /** Which cortices a track crosses. */
  public enum Reach {
    NEAR_CORTEX,
    BOTH_CORTICES,
    /** One or both: the case file does not tell. */
    UNSURE
  }

  /** Return the name of the screw in a hole of a plate, such as {@code op-1/plate-1 hole 3}. */
  static String inHole(String plate, int hole) {
    return plate + " hole " + hole;
  }

  /** Return the name of a bolt, by its place in the list of the nail, from 1. */
  static String bolt(String nail, int place) {
    return nail + " bolt " + place;
  }

  /** Return the name of a pin, by its place in the list of the fixator, from 1. */
  static String pin(String fixator, int place) {
    return fixator + " pin " + place;
  }

  /** Return whether it is of the screw in this hole of a plate of this name in its operation. */
  public boolean isOf(String plate, int hole) {
    return implant.endsWith("/" + plate) && name.equals(inHole(implant, hole));
  }

  /** Return whether it certainly or possibly crosses the far cortex. */
  public boolean mayCrossFar() {
    return reach != Reach.NEAR_CORTEX;
  }

  /** Return the same track at another level. */
  public Track at(Dimension newLevel) {
    return new Track(
        name,
        round,
        implant,
        kind,
        Optional.of(newLevel),
        direction,
        tilt,
        diameter,
        core,
        reach,
        state);
  }
}
