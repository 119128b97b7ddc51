package org.bonewright.measures.hold;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of screw hold. */
public final class HoldMeasures {

  private HoldMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BoneGradeMeasure(),
        new HoldDemand(),
        HoldOnWeakerSide.cortices(),
        HoldOnWeakerSide.lockingScrews(),
        SideHeldBy.conventional(),
        SideHeldBy.lockedOnly());
  }
}
