package org.bonewright.mechanics.answer;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How much of a load a plate with pressed screws bears until its threads are pulled out of the bone
 * one after another.
 *
 * @param loadShareAtFirst share of the load at which the first screw is pulled out; empty where
 *     none is up to 64 times the load
 * @param holdOutShare the largest share that is reached, before or after screws are out; empty
 *     where what is left bears 64 times the load
 * @param unzips whether the next screw is pulled out at a lower load than the first, or nothing
 *     holds once that is out
 * @param screws the screws in the order in which they are pulled out
 */
public record ConstructHoldOut(
    OptionalDouble loadShareAtFirst,
    OptionalDouble holdOutShare,
    boolean unzips,
    List<Pulled> screws) {

  /** Copies the list. */
  public ConstructHoldOut {
    screws = List.copyOf(screws);
  }

  /**
   * A screw that was pulled out.
   *
   * @param plate index of its plate
   * @param at its level in mm
   * @param loadShare share of the load at which it was, the screws before it being out
   */
  public record Pulled(int plate, double at, double loadShare) {}
}
