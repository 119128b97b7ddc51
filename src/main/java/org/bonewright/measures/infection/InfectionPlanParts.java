package org.bonewright.measures.infection;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Which parts of a plan against an infection are there: excision alone, or how many of the others
 * are missing. A plan is closed, the past is not.
 */
final class InfectionPlanParts implements Measure {

  /** What is asked. */
  enum What {
    /** Whether dead bone and tissue are cut out. */
    EXCISION,
    /** How many of dead space, cover, drugs and infection team are not there. */
    OTHERS_MISSING
  }

  private final What what;

  InfectionPlanParts(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case EXCISION ->
          new Definition(
              "infection-excision",
              "Infected tissue cut out",
              Definition.yesOrNo(),
              "yes when a stage debrides the site; not in a plan: no",
              List.of("operations/infectionCare/debridement"),
              "bookkeeping");
      case OTHERS_MISSING ->
          new Definition(
              "infection-parts-missing",
              "Parts against infection missing",
              Definition.count(1),
              "of dead space, soft-tissue cover, weeks of antibiotics and infection team those that"
                  + " no stage names",
              List.of(
                  "operations/infectionCare/deadSpace",
                  "operations/infectionCare/softTissueCover",
                  "operations/infectionCare/antibioticWeeks",
                  "operations/infectionCare/team"),
              "Metsemakers et al. 2020 for the parts");
    };
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missing(
            "infectionCare",
            "What was done about the infection: excision, dead space, cover, drugs, team?");
    if (what == What.EXCISION) {
      return switch (part(scene, care -> care.debridement().map(TreatmentPart::of))) {
        case YES -> Reading.word("yes", "debridement");
        case NO -> Reading.word("no", "debridement");
        case UNKNOWN -> Reading.unknown(missing);
      };
    }
    List<TreatmentPart> parts =
        List.of(
            part(scene, care -> care.deadSpace().map(TreatmentPart::of)),
            part(scene, care -> care.softTissueCover().map(TreatmentPart::of)),
            part(scene, care -> care.antibioticWeeks().map(TreatmentPart::someTime)),
            part(scene, care -> care.team().map(TreatmentPart::of)));
    int no = Collections.frequency(parts, TreatmentPart.NO);
    int open = Collections.frequency(parts, TreatmentPart.UNKNOWN);
    return Reading.number(
        new Dimension(no, no + open, false, ""), "of dead space, cover, drugs and team", missing);
  }

  private static TreatmentPart part(
      Scene scene, Function<InfectionCare, Optional<TreatmentPart>> answer) {
    return TreatmentPart.of(scene, step -> step.infectionCare().flatMap(answer));
  }
}
