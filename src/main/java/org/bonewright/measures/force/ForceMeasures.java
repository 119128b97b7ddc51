package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.measures.Measure;
import org.bonewright.measures.load.PermittedLoads;
import org.bonewright.measures.load.UsualLoads;

/** The measures that the frame model gives. */
public final class ForceMeasures {

  private ForceMeasures() {}

  /** Return each of them, for a table of usual loads. */
  public static List<Measure> all(UsualLoads usual) {
    Modelling modelling = new Modelling(new PermittedLoads(usual));
    return List.of(
        ForceMeasure.boltStress(modelling),
        new ContactKept(),
        ForceMeasure.contact(modelling),
        ForceMeasure.enduranceUsed(modelling),
        ForceMeasure.farMovement(modelling),
        ForceMeasure.life(modelling),
        ForceMeasure.margin(modelling),
        ForceMeasure.most(modelling),
        ForceMeasure.nailStress(modelling),
        ForceMeasure.nearMovement(modelling),
        ForceMeasure.opening(modelling),
        ForceMeasure.pinStress(modelling),
        ForceMeasure.shear(modelling),
        ForceMeasure.steady(modelling),
        ForceMeasure.strain(modelling),
        ForceMeasure.stress(modelling),
        HoldOutMeasure.mode(modelling),
        HoldOutMeasure.share(modelling),
        new ModelledLine(),
        new StiffnessGain(modelling),
        new StrutMeasure(modelling));
  }
}
