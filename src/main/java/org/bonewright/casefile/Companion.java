package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** The fibula, or the other bone of the forearm. */
public record Companion(
    @Meaning("Which bone.") CompanionBone bone,
    @Meaning("Its state now.") State state,
    @Meaning("Its fracture zone.") Optional<Zone> zone,
    @Meaning("Operations on it.") List<Operation> operations) {

  /** The bone beside. */
  public enum CompanionBone {
    FIBULA,
    RADIUS,
    ULNA
  }

  /** The state of the bone beside. */
  public enum State {
    INTACT,
    FRACTURED,
    FIXED,
    UNITED,
    NONUNION,
    RESECTED,
    UNKNOWN
  }
}
