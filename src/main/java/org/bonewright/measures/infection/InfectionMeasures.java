package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of infection. */
public final class InfectionMeasures {

  private InfectionMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new AntibioticFreeDays(),
        new ConfirmatorySigns(),
        new FirstStagePutsIn(),
        new InfectionPlanParts(InfectionPlanParts.What.EXCISION),
        new InfectionPlanParts(InfectionPlanParts.What.OTHERS_MISSING),
        new InfectionState(),
        new InfectionWorkedUp(),
        new MarkersTaken(),
        new PlannedAction(PlannedAction.Action.CULTURE_DAYS),
        new PlannedAction(PlannedAction.Action.DEEP_SAMPLES),
        new PlannedAction(PlannedAction.Action.HISTOLOGY),
        new PlannedAction(PlannedAction.Action.INFECTION_DIRECTED),
        new ResultPathGiven(),
        new SiteAtRisk());
  }
}
