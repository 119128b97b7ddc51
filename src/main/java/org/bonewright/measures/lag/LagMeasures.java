package org.bonewright.measures.lag;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of lag screws. */
public final class LagMeasures {

  private LagMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new LagAngle(),
        new LagGlides(),
        new LagScrewUsed(),
        new LagToTip(),
        new PiecesFixedSingly());
  }
}
