package org.bonewright.mechanics.answer;

import java.util.List;

/**
 * What a nail carries under one load.
 *
 * @param cuts at each bolt and at the line, from proximal to distal; where two stretches meet, the
 *     one that is bent more
 * @param bolts what each bolt carries, in the order of the nail
 */
public record NailAnswer(List<TubeCut> cuts, List<BoltDemand> bolts) {

  /** Copies the lists. */
  public NailAnswer {
    cuts = List.copyOf(cuts);
    bolts = List.copyOf(bolts);
  }
}
