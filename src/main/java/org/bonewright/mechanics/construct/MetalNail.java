package org.bonewright.mechanics.construct;

import java.util.List;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * A nail on the axis of the bone.
 *
 * @param material of the nail
 * @param section its tube
 * @param bolts its locking bolts
 */
public record MetalNail(Material material, HollowCircle section, List<Bolt> bolts) {

  /** Copies the list. */
  public MetalNail {
    bolts = List.copyOf(bolts);
  }

  /**
   * A locking bolt through both cortices.
   *
   * @param at level in mm
   * @param azimuth degrees around the bone of its near end
   * @param material of the bolt
   * @param diameter in mm
   * @param fixed whether it cannot move in the nail
   * @param rigid whether its bending is to be left out, for checks
   */
  public record Bolt(
      double at,
      double azimuth,
      Material material,
      double diameter,
      boolean fixed,
      boolean rigid) {}
}
