package org.bonewright.measures.care;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of aftercare, and of what a plan settles beforehand. */
public final class CareMeasures {

  private CareMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new FailedOperations(),
        new LoadLimitGiven(),
        new Motion(),
        new MotionPlanned(),
        new PlanList(PlanList.What.ALTERNATIVES),
        new PlanList(PlanList.What.TRIGGERS),
        new Visits(Visits.What.LONGEST_INTERVAL),
        new Visits(Visits.What.NUMBER));
  }
}
