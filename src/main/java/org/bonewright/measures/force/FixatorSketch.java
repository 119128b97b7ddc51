package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.bone.Dimension;

/**
 * An external fixator as far as the case file tells it, with its levels in mm from the middle of
 * the line.
 *
 * @param id its name in the file
 * @param pinMetal metal of its pins
 * @param azimuth degrees around the bone of its bars, from where azimuths are counted
 * @param bars how many bars it has
 * @param distance from the bone to the nearest bar in mm
 * @param barDiameter of each bar in mm
 * @param pins its pins
 */
record FixatorSketch(
    String id,
    Metal pinMetal,
    double azimuth,
    int bars,
    Dimension distance,
    Dimension barDiameter,
    List<Pin> pins) {

  FixatorSketch {
    pins = List.copyOf(pins);
  }

  /**
   * A pin through both cortices.
   *
   * @param at level
   * @param diameter in mm
   */
  record Pin(Dimension at, Dimension diameter) {}

  /** Return how far it reaches from the line at the most, in mm. */
  double reach() {
    return pins.stream().mapToDouble(pin -> pin.at().magnitude().max()).max().orElse(0);
  }
}
