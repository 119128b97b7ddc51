package org.bonewright.casefile;

/** A thing put into or onto the bone. It stays there until an operation removes it by its id. */
public sealed interface Implant permits Cerclage, ExternalFixator, LagScrew, Nail, Plate, Strut {

  /** Return the implant's name within its operation. */
  String id();
}
