package org.bonewright.measures.healing;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of healing. */
public final class HealingMeasures {

  private HealingMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new CalledNonunion(),
        new ConceptThen("concept-before", Stretch.BEFORE),
        new ConceptThen("concept-now", Stretch.STANDING),
        new DefectStatement(),
        new FalseJoint(),
        new FirmBefore(),
        new MetalHolds("metal-holds-after", Stretch.AFTER),
        new MetalHolds("metal-holds-now", Stretch.STANDING),
        new ProtectionEnded(),
        RadiographicProgress.measure(),
        CtWithoutBridge.measure(),
        new SmallRemedy(),
        new TreatedWithoutOperation(),
        TreatmentChanged.measure(),
        new Weeks(Weeks.Since.INJURY),
        new Weeks(Weeks.Since.OPERATION_BEFORE),
        new Weeks(Weeks.Since.OPERATION_NOW),
        Diagnosis.defect("defect-found", Stretch.STANDING),
        Diagnosis.label("union-label-after", Stretch.AFTER),
        Diagnosis.label("union-label-now", Stretch.STANDING),
        Diagnosis.label("union-label-without-operation", Stretch.WITHOUT_OPERATION),
        Diagnosis.motionFelt("motion-felt-after", Stretch.AFTER),
        Diagnosis.motionFelt("motion-felt-now", Stretch.STANDING),
        Diagnosis.pain("pain-after", Stretch.AFTER),
        Diagnosis.pain("pain-now", Stretch.STANDING),
        Diagnosis.vitalityStated("vitality-stated", Stretch.STANDING),
        FilmReading.bridgedCortices(),
        FilmReading.callus(),
        FilmReading.line(),
        FilmReading.lucentScrews(),
        FilmReading.widening(),
        FilmScore.before(),
        FilmScore.now(),
        FilmScore.inWeeks("rust-12-weeks", 10, 14),
        FilmScore.withoutOperation("rushu-6-weeks", 5, 7),
        FilmScore.withoutOperation("rushu-12-weeks", 11, 13));
  }
}
