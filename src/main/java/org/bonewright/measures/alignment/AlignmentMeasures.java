package org.bonewright.measures.alignment;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of alignment, length and lever arms. */
public final class AlignmentMeasures {

  private AlignmentMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new AngulationWorst(),
        new BoneAligned(),
        new BowDifference(BowDifference.What.HEIGHT),
        new BowDifference(BowDifference.What.PLACE),
        new DeformityKept(Plane.CORONAL),
        new DeformityKept(Plane.SAGITTAL),
        new DeformityKept(Plane.ROTATION),
        new Deviation(Plane.CORONAL),
        new Deviation(Plane.SAGITTAL),
        new Deviation(Plane.ROTATION),
        new ForearmJointsSit(),
        new InVarus(),
        new LengthLost(),
        new LengthLostShare(),
        new LineOpened(),
        new ShoulderComplaint(),
        new SteepLine(),
        new StepShare(),
        new StiffJoint(),
        new UlnarVariance());
  }
}
