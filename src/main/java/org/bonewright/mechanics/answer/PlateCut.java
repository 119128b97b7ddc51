package org.bonewright.mechanics.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a plate carries at one level, about its own axis, and the stress from it in MPa.
 *
 * @param z level in mm
 * @param axial N along the plate, tension positive
 * @param away shear in N away from the bone
 * @param across shear in N across the bone
 * @param weak bending in N·mm that bends it away from the bone
 * @param strong bending in N·mm that bends it across the bone
 * @param torque N·mm about the plate
 * @param nominal stress on the section that is left
 * @param edge stress at the edge of the hole; the nominal one where there is no hole
 * @param equivalent stress at the edge together with shear from torsion
 */
public record PlateCut(
    double z,
    double axial,
    double away,
    double across,
    double weak,
    double strong,
    double torque,
    double nominal,
    double edge,
    double equivalent) {

  /** Return the cut that carries the largest stress; empty if there is none. */
  public static Optional<PlateCut> peak(List<PlateCut> cuts) {
    return cuts.stream().max(Comparator.comparingDouble(PlateCut::equivalent));
  }
}
