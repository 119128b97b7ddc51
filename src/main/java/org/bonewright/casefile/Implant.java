package org.bonewright.casefile;

import java.util.Optional;

/** A thing put into or onto the bone. It stays there until an operation removes it by its id. */
public sealed interface Implant permits Cerclage, ExternalFixator, LagScrew, Nail, Plate, Strut {

  /** Return the implant's name within its operation. */
  String id();

  /**
   * Return the field that would tell its screws, bolts or pins, where the file leaves it out; empty
   * where they are told or where it has none.
   */
  default Optional<String> untoldScrews() {
    if (this instanceof Plate plate && plate.screws().isEmpty()) {
      return Optional.of("screws");
    }
    if (this instanceof Nail nail && nail.bolts().isEmpty()) {
      return Optional.of("bolts");
    }
    return this instanceof ExternalFixator fixator && fixator.pins().isEmpty()
        ? Optional.of("pins")
        : Optional.empty();
  }

  /** Return whether it can hold a fracture by itself: a plate, a nail or a fixator. */
  default boolean isMain() {
    return this instanceof Plate || this instanceof Nail || this instanceof ExternalFixator;
  }
}
