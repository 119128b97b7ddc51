package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** Wires or cables around the bone. */
@Kind("cerclage")
public record Cerclage(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Levels in mm.") @Between(min = 0, max = 600) List<Quantity> atMm,
    @Meaning("Wire or cable.") Optional<Type> type,
    @Meaning("What it holds.") Optional<Holds> holds)
    implements Implant {

  /** What a cerclage holds. */
  public enum Holds {
    /** A main fragment against the plate or its fellow. */
    FRAGMENT,
    /** A wedge in its bed. */
    WEDGE,
    /** An onlay strut. */
    STRUT
  }

  /** Wire or cable. */
  public enum Type {
    WIRE,
    CABLE
  }
}
