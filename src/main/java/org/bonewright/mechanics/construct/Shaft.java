package org.bonewright.mechanics.construct;

import java.util.OptionalDouble;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * The two fragments of a bone, of one section throughout.
 *
 * @param material of the cortex
 * @param section the tube
 * @param proximal length of the proximal fragment in mm
 * @param distal length of the distal fragment in mm
 * @param shearStrength of the cortex along the bone in MPa, where the hold of threads is asked for
 * @param compressiveStrength of the cortex in MPa, where the pressure of screws on it is judged
 */
public record Shaft(
    Material material,
    HollowCircle section,
    double proximal,
    double distal,
    OptionalDouble shearStrength,
    OptionalDouble compressiveStrength) {

  /** Make a shaft of which nobody asks at what pressure it is crushed. */
  public Shaft(
      Material material,
      HollowCircle section,
      double proximal,
      double distal,
      OptionalDouble shearStrength) {
    this(material, section, proximal, distal, shearStrength, OptionalDouble.empty());
  }
}
