package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Axes;
import org.bonewright.mechanics.frame.Vector;

/** Directions around the bone. */
final class Turned {

  private Turned() {}

  /** Return the direction away from the axis at an azimuth in degrees. */
  static Vector outward(double azimuth) {
    double angle = Math.toRadians(azimuth);
    return new Vector(Math.cos(angle), Math.sin(angle), 0);
  }

  /** Return the axes of something that points away from the bone: itself first, then along it. */
  static Axes screw(Vector outward) {
    return Axes.of(outward, BoneLine.ALONG);
  }

  /** Return the axes of something that runs along the bone: along it, away from it, across. */
  static Axes plate(Vector outward) {
    return Axes.of(BoneLine.ALONG, outward);
  }
}
