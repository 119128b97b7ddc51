package org.bonewright.measures.hold;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of screw hold. */
public final class HoldMeasures {

  private HoldMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BoneDoubtMeasure(),
        new BoneGradeMeasure(),
        new BoneGradeMethod(),
        new EndScrewReach(),
        new HoldAdded(),
        new HoldDemand(),
        HoldOnWeakerSide.cortices(),
        HoldOnWeakerSide.lockingEachSide(),
        HoldOnWeakerSide.lockingScrews(),
        new LooseningPattern(),
        new LoosenedBefore(),
        new PlateEndScrew(),
        new ScrewTipNumber(ScrewTipNumber.What.FARTHEST),
        new ScrewTipNumber(ScrewTipNumber.What.TOO_SHORT),
        new ScrewTipsRecorded(),
        SideHeldBy.conventional(),
        SideHeldBy.lockedOnly(),
        new SingleCortexNumber(SingleCortexNumber.What.BOTH_CORTICES),
        new SingleCortexNumber(SingleCortexNumber.What.SHARE),
        new SingleCortexRelied());
  }
}
