package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.PlanTold;

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
        resultPathGiven(),
        new SiteAtRisk());
  }

  private static Measure resultPathGiven() {
    return new PlanTold(
        new Definition(
            "result-path-given",
            "A path for late culture results",
            Definition.yesOrNo(),
            "yes when the plan says who acts on late culture results; none for an operation of the past",
            List.of("plans/resultPath"),
            "bookkeeping"),
        Plan::resultPath,
        "a path is written down",
        "none is written down");
  }
}
