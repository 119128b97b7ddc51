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
        StressMeasures.boltStress(modelling),
        new ContactKept(),
        MovementMeasures.contact(modelling),
        EnduranceMeasures.enduranceUsed(modelling),
        MovementMeasures.farMovement(modelling),
        EnduranceMeasures.life(modelling),
        MarginMeasures.margin(modelling),
        MovementMeasures.most(modelling),
        StressMeasures.nailStress(modelling),
        MovementMeasures.nearMovement(modelling),
        MarginMeasures.opening(modelling),
        StressMeasures.pinStress(modelling),
        MovementMeasures.shear(modelling),
        StressMeasures.steady(modelling),
        MovementMeasures.strain(modelling),
        StressMeasures.stress(modelling),
        HoldOutMeasure.mode(modelling),
        HoldOutMeasure.share(modelling),
        new ModelledLine(),
        new StiffnessGain(modelling),
        new StrutMeasure(modelling));
  }
}
