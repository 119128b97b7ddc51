package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** An external fixator. */
@Kind("external-fixator")
public record ExternalFixator(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Kind of frame.") Optional<Frame> frame,
    @Meaning("The pins.") Optional<List<Pin>> pins,
    @Meaning("Number of bars.") @Between(min = 1, max = 8) Optional<Integer> bars,
    @Meaning("Distance in mm from the bone to the axis of the nearest bar.")
        @Between(min = 5, max = 200)
        Optional<Quantity> barDistanceMm,
    @Meaning("Diameter of the bars in mm.") @Between(min = 2, max = 40) Optional<Quantity> barMm)
    implements Implant {

  /** Return the same fixator without the pins at these places of its list, counted from 1. */
  public ExternalFixator withoutPins(List<Integer> taken) {
    return new ExternalFixator(
        id, frame, pins.map(all -> Places.without(all, taken)), bars, barDistanceMm, barMm);
  }

  /** Kinds of frame. */
  public enum Frame {
    UNILATERAL,
    RING,
    HYBRID
  }
}
