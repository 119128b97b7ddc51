package org.bonewright.mechanics.construct;

import java.util.List;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.Rectangle;

/**
 * A straight plate along the bone.
 *
 * @param material of the plate
 * @param section its solid section
 * @param standOff distance between its underside and the bone in mm, at least 0
 * @param holeDiameter diameter of its holes in mm; of slots the width
 * @param holes levels of its holes, from proximal to distal
 * @param azimuth degrees around the bone
 */
public record MetalPlate(
    Material material,
    Rectangle section,
    double standOff,
    double holeDiameter,
    List<Double> holes,
    double azimuth) {

  /** Copies the list. */
  public MetalPlate {
    holes = List.copyOf(holes);
  }

  /** Return one of its holes. */
  public PlateHole hole() {
    return new PlateHole(section, holeDiameter);
  }

  /** Return how far the axis of the plate lies from the axis of a bone of this width, in mm. */
  public double axisFrom(double outer) {
    return outer / 2 + standOff + section.thickness() / 2;
  }
}
