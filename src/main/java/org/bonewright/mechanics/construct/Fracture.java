package org.bonewright.mechanics.construct;

import org.bonewright.mechanics.section.Material;

/**
 * The line between two fragments.
 *
 * @param gap width in mm; 0 where the ends touch
 * @param filling what lies in it
 */
public record Fracture(double gap, Filling filling) {

  /** The thinnest layer that is reckoned with, in mm. */
  public static final double THINNEST_LAYER = 0.1;

  /** What lies between the ends. */
  public sealed interface Filling {

    /** Nothing, and the ends pass through each other: for checks of the open gap only. */
    record Nothing() implements Filling {}

    /**
     * The ends meet when they have closed the gap, and push, but never pull.
     *
     * @param friction coefficient between the ends; 0 for none
     */
    record Touching(double friction) implements Filling {}

    /**
     * A layer that is bonded to both ends: callus, or bone.
     *
     * @param material of the layer
     */
    record Layer(Material material) implements Filling {}
  }

  /** Return how thick a bonded layer is, in mm. */
  public double layer() {
    return Math.max(gap, THINNEST_LAYER);
  }
}
