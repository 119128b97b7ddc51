package org.bonewright.mechanics.construct;

import java.util.List;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * An external fixator on one side of the bone: pins through both cortices, clamped to bars that run
 * along the bone outside the skin. The clamps are taken as rigid; a real one slips and wears.
 *
 * @param azimuth degrees around the bone of the side on which the bars lie
 * @param bars one or two, the nearest to the bone first
 * @param pins the pins, each clamped to every bar
 */
public record BarFixator(double azimuth, List<Bar> bars, List<Pin> pins) {

  /** Copies the lists. */
  public BarFixator {
    bars = List.copyOf(bars);
    pins = List.copyOf(pins);
  }

  /**
   * A bar.
   *
   * @param material of the bar
   * @param section its tube or rod
   * @param distance from the surface of the bone to the axis of the bar in mm, above zero
   */
  public record Bar(Material material, HollowCircle section, double distance) {}

  /**
   * A pin, threaded where it lies in bone.
   *
   * @param at level in mm
   * @param material of the pin
   * @param diameter of its shank, and outer diameter of its thread, in mm
   * @param core diameter of the core of its thread in mm
   * @param rigid whether its bending is to be left out, for checks
   */
  public record Pin(double at, Material material, double diameter, double core, boolean rigid) {}
}
