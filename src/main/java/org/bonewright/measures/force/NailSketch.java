package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.bone.Dimension;

/**
 * A nail as far as the case file tells it, with its levels in mm from the middle of the line.
 *
 * @param id its name in the file
 * @param metal of nail and bolts
 * @param outer diameter in mm
 * @param bore diameter of its bore as a share of the outer one
 * @param bolts its bolts
 * @param rests where the canal may hold it
 */
record NailSketch(
    String id, Metal metal, Dimension outer, Dimension bore, List<Bolt> bolts, List<Rest> rests) {

  NailSketch {
    bolts = List.copyOf(bolts);
    rests = List.copyOf(rests);
  }

  /**
   * A locking bolt.
   *
   * @param at level
   * @param azimuth degrees around the bone from where azimuths are counted
   * @param diameter in mm
   * @param slides whether it lies in a slot along the nail
   */
  record Bolt(Dimension at, double azimuth, Dimension diameter, boolean slides) {}

  /**
   * A level at which the canal is narrow enough to stop the nail.
   *
   * @param at level
   * @param canal diameter of the canal there in mm
   */
  record Rest(Dimension at, Dimension canal) {}
}
