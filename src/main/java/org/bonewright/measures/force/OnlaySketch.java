package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.bone.Dimension;

/**
 * A strut on the surface of the bone, across the line.
 *
 * @param azimuth degrees around the bone, from where azimuths are counted
 * @param from mm from the middle of the line
 * @param to mm from the middle of the line
 * @param width mm round the bone
 * @param wall its thickness in mm
 * @param wires levels of wires that hold it, in mm from the middle of the line
 */
record OnlaySketch(
    double azimuth,
    Dimension from,
    Dimension to,
    Dimension width,
    Dimension wall,
    List<Dimension> wires) {

  OnlaySketch {
    wires = List.copyOf(wires);
  }

  /** Return how far its wires reach from the line at the most, in mm. */
  double reach() {
    return wires.stream().mapToDouble(wire -> wire.magnitude().max()).max().orElse(0);
  }
}
