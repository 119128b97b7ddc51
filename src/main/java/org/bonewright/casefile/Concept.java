package org.bonewright.casefile;

/** The kind of stability that an operation sets out to give. */
public enum Concept {
  /** No movement at the line: lag screw and neutralisation, or axial compression. */
  ABSOLUTE,
  /** Controlled movement that calls for callus: bridging plate, nail, fixator. */
  RELATIVE
}
