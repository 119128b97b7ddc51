package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.reading.Problem;

/** Checks whether the fields of a case file agree with each other. */
public final class Consistency {

  private static final Check SIZE = new HistoryHasASizeThatOccurs();

  private static final List<Check> CHECKS =
      List.of(
          new PublishedCaseNamesItsSource(),
          new SideIsTold(),
          new PatientIsFullyGrown(),
          new BoneLengthIsThatOfAnAdult(),
          new SectionsDescribeATube(),
          new BoneQualityFitsItsMethod(),
          new CompanionBelongsToTheBone(),
          new LoadsAreFewAndLoadTheBone(),
          new ZonesRunFromNearToFar(),
          new OtherImplantsRunFromNearToFar(),
          new LevelsLieOnTheBone(),
          new FindingsStandInOrderOfDay(),
          new SmokingHistoryAgrees(),
          new SamplesWithGrowthWereTaken(),
          new FilmScoresFourCortices(),
          new NamesAreGivenOnce(),
          new OperationsStandInOrderOfDay(),
          new OutcomesFollowTheirOperation(),
          new OutcomesDoNotContradictThemselves(),
          new FailedMetalWasInTheBone(),
          new BrokenHoleIsOnAPlate(),
          new BrokenHoleIsFilledAsSaid(),
          new PlannedStagesLieAhead(),
          new IntervalsLeadToAStage(),
          new OnlyAPairHasABoneBeside(),
          new OnlyAForearmHasTwoBonesToFit(),
          new HolesAreOnThePlate(),
          new HolesHoldOneThing(),
          new HoldIsToldOnce(),
          new PlacesSayWhereThePlateLies(),
          new PlacesByHolesAndByLevelAgree(),
          new PlatesAreNoLongerThanTheBone(),
          new PlatesEndOnTheBone(),
          new PlateLengthFitsItsHoles(),
          new LockingScrewsSitInLockingHoles(),
          new ScrewLengthFitsTheBone(),
          new TipsAgreeWithCortices(),
          new PlatesLieNearTheBone(),
          new CompressionAgreesWithItself(),
          new MetalStatesFollowTheOperation(),
          new LagScrewsPassThroughAPlateThatIsThere(),
          new LagCompressionHasALagScrew(),
          new NerveCrossesHolesThatAreThere(),
          new NailsFitTheBone(),
          new NailsPassNoScrewThatStays(),
          new BoltsFitTheirNail(),
          new StrutsHaveASoundShape(),
          new HeldStrutsAreThere(),
          new TransportHasACarrier(),
          new ResectionsRunFromNearToFar(),
          new ShorteningCoversWhatWasCut(),
          new RemovedMetalWasThere(),
          new RemovedHolesHeldAScrew(),
          new RemovedBoltsAndPinsWereThere(),
          new MetalComesOutOnce(),
          new DecidedPiecesWereThere(),
          new StatesWereSeenBeforeRemoval(),
          new AftercareRunsForward(),
          new NonOperativeTreatmentEndsAfterItBegins(),
          new OnePlanIsChosen(),
          new PlansHaveStages(),
          new AcceptancesNameWhatExists());

  /** Return every contradiction in the file, in the order of their pointers. */
  public List<Problem> check(CaseFile file) {
    Contents contents = Contents.of(file);
    Objections objections = new Objections();
    SIZE.look(contents, objections);
    if (objections.areNone()) {
      CHECKS.forEach(check -> check.look(contents, objections));
    }
    return objections.inOrder();
  }
}
