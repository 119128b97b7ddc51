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
 * @param rests where the wall of the canal may stop it from moving sideways
 */
public record MetalNail(
    Material material, HollowCircle section, List<Bolt> bolts, List<Rest> rests) {

  /** Copies the lists. */
  public MetalNail {
    bolts = List.copyOf(bolts);
    rests = List.copyOf(rests);
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
   * @param slides whether it lies in a slot that lets it move along the nail
   */
  public record Bolt(
      double at,
      double azimuth,
      Material material,
      double diameter,
      boolean fixed,
      boolean rigid,
      boolean slides) {}

  /**
   * A level at which the nail comes to lie against the wall of the canal.
   *
   * @param at level in mm, within a fragment
   * @param slack how far the nail moves sideways before it touches the wall, in mm; 0 where it
   *     fills the canal
   */
  public record Rest(double at, double slack) {}
}
