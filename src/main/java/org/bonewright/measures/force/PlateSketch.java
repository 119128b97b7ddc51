package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.ThreadForm;

/**
 * A plate with its screws, every dimension a range.
 *
 * @param id its name
 * @param metal what it and its screws are made of
 * @param width mm
 * @param thickness mm
 * @param hole width of its holes in mm
 * @param standOff distance from the bone in mm
 * @param azimuth degrees around the bone from the first plate
 * @param holes its holes from proximal to distal
 * @param screws its screws, without those that hold nothing
 */
record PlateSketch(
    String id,
    Metal metal,
    Dimension width,
    Dimension thickness,
    Dimension hole,
    Dimension standOff,
    double azimuth,
    List<Hole> holes,
    List<Screw> screws) {

  /** Shares of thread in both cortices that together count as none; our convention. */
  static final double NO_THREAD = 0.01;

  PlateSketch {
    holes = List.copyOf(holes);
    screws = List.copyOf(screws);
  }

  /**
   * A hole.
   *
   * @param at mm from the middle of the line
   * @param side of the line on which it lies
   */
  record Hole(Dimension at, HoleSide side) {}

  /**
   * A screw.
   *
   * @param hole index of its hole
   * @param thread its thread
   * @param locked whether it is locked in the plate
   * @param near share of its thread that holds in the near cortex
   * @param far share of its thread that holds in the far cortex
   * @param tip how far its tip stands out beyond the far cortex, in mm; 0 where that is not told
   */
  record Screw(
      int hole, ThreadForm thread, boolean locked, Dimension near, Dimension far, Dimension tip) {}
}
