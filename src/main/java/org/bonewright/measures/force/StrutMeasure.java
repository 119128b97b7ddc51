package org.bonewright.measures.force;

import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much of the bending at the line a strut in the canal carries; see {@link StrutShare}. */
final class StrutMeasure implements Measure {

  private final Modelling modelling;

  StrutMeasure(Modelling modelling) {
    this.modelling = modelling;
  }

  @Override
  public Definition definition() {
    return new Definition(
        "strut-share",
        "Bending that the strut carries",
        Definition.percent(),
        "bending moment in a strut in the canal at the line, over the bending moment of the load of"
            + " the first six weeks; the plates and ends that meet carry the rest. 0 where no screw"
            + " holds the strut on one side of the line. None where no strut crosses it",
        ForceMeasure.INPUTS,
        "frame model, in which screws hold a strut too softly: the share is rather too low");
  }

  @Override
  public Reading take(Scene scene) {
    return modelling
        .forces(scene)
        .read(
            known ->
                known.sketch().strut().isEmpty()
                    ? new Reading.None("no strut crosses the line")
                    : known.reading(Solved::strut));
  }
}
