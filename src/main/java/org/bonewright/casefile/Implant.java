package org.bonewright.casefile;

/** A thing put into or onto the bone. It stays there until an operation removes it by its id. */
public sealed interface Implant permits Cerclage, ExternalFixator, LagScrew, Nail, Plate, Strut {

  /** Return the implant's name within its operation. */
  String id();

  /** Return whether it can hold a fracture by itself: a plate, a nail or a fixator. */
  default boolean isMain() {
    return this instanceof Plate || this instanceof Nail || this instanceof ExternalFixator;
  }
}
