package org.bonewright.measures.history;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of earlier operations. */
public final class HistoryMeasures {

  private HistoryMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new FailedBefore(),
        new FailedFactorsChanged(),
        new FailureClass(),
        new FailureModeRecorded(),
        new EarlierGrafts(EarlierGrafts.Which.ALL),
        new EarlierGrafts(EarlierGrafts.Which.ON_UNCHANGED_MECHANICS),
        new HoldChanged(),
        new MechanicsChanged(),
        new StabilityAdded(),
        new OperationFailed(),
        new WeeksToFailure());
  }
}
