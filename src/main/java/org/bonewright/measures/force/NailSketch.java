package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.bone.Dimension;

/**
 * A nail with its bolts.
 *
 * @param metal what it is made of
 * @param outer diameter in mm
 * @param bore bore in mm
 * @param bolts its bolts
 */
record NailSketch(Metal metal, Dimension outer, Dimension bore, List<Bolt> bolts) {

  NailSketch {
    bolts = List.copyOf(bolts);
  }

  /**
   * A bolt.
   *
   * @param at mm from the middle of the line
   * @param diameter mm
   * @param azimuth degrees around the bone
   * @param fixed whether it cannot move in the nail
   */
  record Bolt(Dimension at, Dimension diameter, double azimuth, boolean fixed) {}
}
