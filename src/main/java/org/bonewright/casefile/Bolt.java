package org.bonewright.casefile;

import java.util.Optional;

/** A locking bolt of a nail. */
public record Bolt(
    @Meaning("Which end of the nail.") End end,
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Optional<Quantity> atMm,
    @Meaning("Direction in which it was put in.") Optional<Direction> plane,
    @Meaning("Diameter in mm.") @Between(min = 2, max = 8) Optional<Quantity> diameterMm,
    @Meaning("What became of it.") Optional<ScrewRow.State> state,
    @Meaning("Day on which that was seen.") @Between(min = 0, max = 36500)
        Optional<Quantity> stateDay) {

  /** The end of the nail, seen along the bone. */
  public enum End {
    /** Towards the landmark. */
    NEAR,
    /** Away from the landmark. */
    FAR
  }
}
