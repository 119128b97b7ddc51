package org.bonewright.mechanics.construct;

import java.util.List;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/**
 * A strut of bone that lies on the surface of the bone, across the fracture. It is held by the
 * plate screws that come out opposite their plate and pass through it, and by wires around both.
 *
 * @param material of the strut
 * @param section its width round the bone and its thickness
 * @param azimuth degrees around the bone
 * @param from level of its proximal end in mm
 * @param to level of its distal end in mm
 * @param wires levels of the wires around strut and bone
 * @param missed levels of plate screws that are too short to pass through it
 */
public record OnlayStrut(
    Material material,
    Rectangle section,
    double azimuth,
    double from,
    double to,
    List<Double> wires,
    List<Double> missed) {

  /** How far off the opposite side of its plate a screw still passes the strut, in degrees. */
  public static final double OPPOSITE = 45;

  private static final double TURN = 360;

  /** Copies the list. */
  public OnlayStrut {
    wires = List.copyOf(wires);
    missed = List.copyOf(missed);
  }

  /** Return whether the screws of a plate on this side of the bone come out where it lies. */
  public boolean isOpposite(double plateAzimuth) {
    return apart(plateAzimuth + TURN / 2) <= OPPOSITE;
  }

  /** Return the angle between it and another side of the bone, 0 to 180 degrees. */
  public double apart(double side) {
    double turned = Math.abs((side - azimuth) % TURN);
    return Math.min(turned, TURN - turned);
  }

  /** Return whether a screw at a level, which comes out on its side, passes through it. */
  public boolean isPassed(double level) {
    return level >= from && level <= to && !missed.contains(level);
  }
}
