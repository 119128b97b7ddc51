package org.bonewright.measures.nailchange;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of what a revision does with a nail. */
public final class NailChangeMeasures {

  private NailChangeMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new DynamisationConditions(),
        new ExchangeAids(),
        new ExchangeConditions(),
        new ExchangeFailedBefore(),
        new FailedNailFill(),
        new NailBrokeBefore(),
        new NailGrowth(NailGrowth.What.DIAMETER),
        new NailGrowth(NailGrowth.What.LENGTH),
        new NailDynamised(),
        new NailRevision(),
        new RoomToShorten(),
        new WeeksSinceNailing());
  }
}
