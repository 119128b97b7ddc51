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
    PermittedLoads loads = new PermittedLoads(usual);
    return List.of(
        ForceMeasure.contact(loads),
        ForceMeasure.enduranceUsed(loads),
        ForceMeasure.farMovement(loads),
        ForceMeasure.life(loads),
        ForceMeasure.margin(loads),
        ForceMeasure.nearMovement(loads),
        ForceMeasure.opening(loads),
        ForceMeasure.shear(loads),
        ForceMeasure.steady(loads),
        ForceMeasure.strain(loads),
        ForceMeasure.stress(loads),
        new StiffnessGain());
  }
}
