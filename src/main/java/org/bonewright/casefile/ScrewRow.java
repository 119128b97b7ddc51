package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** Screws of one kind in one plate, by hole. */
public record ScrewRow(
    @Meaning("The holes.") @Between(min = 1, max = 30) List<Integer> at,
    @Meaning("Kind of screw.") Type type,
    @Meaning("Thread diameter in mm.") @Between(min = 1, max = 10) Optional<Quantity> diameterMm,
    @Meaning("Cortices that the thread crosses.") @Between(min = 0, max = 2)
        Optional<Quantity> cortices,
    @Meaning("Length in mm.") @Between(min = 4, max = 150) Optional<Quantity> lengthMm,
    @Meaning("How far the tip stands beyond the far cortex in mm; below zero where it falls short.")
        @Between(min = -60, max = 40)
        Optional<Quantity> tipBeyondMm,
    @Meaning("Tilt in degrees along the bone; positive when the tip points away from the landmark.")
        @Between(min = -60, max = 60)
        Optional<Quantity> tiltDeg,
    @Meaning("What adds to its hold.") Optional<Augmentation> augmentation,
    @Meaning("What the screw bites into.") Optional<Track> track,
    @Meaning("What became of the screw.") Optional<State> state,
    @Meaning("Day on which that was seen.") @Between(min = 0, max = 36500)
        Optional<Quantity> stateDay,
    @Meaning("Place in the order of insertion.") @Between(min = 1, max = 60)
        Optional<Integer> order) {

  /** Return the same row without these holes. */
  ScrewRow without(List<Integer> taken) {
    return new ScrewRow(
        at.stream().filter(hole -> !taken.contains(hole)).toList(),
        type,
        diameterMm,
        cortices,
        lengthMm,
        tipBeyondMm,
        tiltDeg,
        augmentation,
        track,
        state,
        stateDay,
        order);
  }

  /** Kinds of plate screw. */
  public enum Type {
    CORTICAL,
    CANCELLOUS,
    LOCKING
  }

  /** What adds to the hold of a screw. */
  public enum Augmentation {
    CEMENT,
    /** A nut or washer on the far side. */
    NUT
  }

  /** What a screw bites into. */
  public enum Track {
    /** Bone never drilled before. */
    FRESH,
    /** The track of an earlier screw, same size. */
    OLD_HOLE,
    /** The track of an earlier screw, with a larger thread. */
    OLD_HOLE_LARGER
  }

  /** What became of a screw. */
  public enum State {
    SOUND,
    /** Lost its hold at insertion. */
    STRIPPED,
    LOOSE,
    BROKEN,
    BACKED_OUT
  }
}
