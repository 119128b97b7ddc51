package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
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
      Optional<Boolean> excised = said(scene, care -> care.debridement().flatMap(this::yes));
      return excised
          .<Reading>map(yes -> Reading.word(yes ? "yes" : "no", "debridement"))
          .orElseGet(() -> Reading.unknown(missing));
    }
    List<Optional<Boolean>> parts = new ArrayList<>();
    parts.add(said(scene, care -> care.deadSpace().flatMap(this::yes)));
    parts.add(said(scene, care -> care.softTissueCover().flatMap(this::yes)));
    parts.add(said(scene, care -> care.antibioticWeeks().map(weeks -> weeks.min() > 0)));
    parts.add(said(scene, care -> care.team().flatMap(this::yes)));
    int no = (int) parts.stream().filter(part -> part.equals(Optional.of(false))).count();
    int open = (int) parts.stream().filter(Optional::isEmpty).count();
    return new Reading.Amount(
        no,
        no + open,
        Kind.FACT,
        "of dead space, cover, drugs and team",
        open == 0 ? List.of() : List.of(missing));
  }

  private Optional<Boolean> yes(Answer answer) {
    return answer == Answer.UNKNOWN ? Optional.empty() : Optional.of(answer == Answer.YES);
  }

  /** Whether any stage does it; empty where that is not told. */
  private static Optional<Boolean> said(
      Scene scene, Function<InfectionCare, Optional<Boolean>> part) {
    List<Operation> steps = scene.subject().steps();
    List<Boolean> told =
        steps.stream()
            .flatMap(step -> step.infectionCare().stream())
            .flatMap(care -> part.apply(care).stream())
            .toList();
    if (told.contains(true)) {
      return Optional.of(true);
    }
    return scene.subject().planned() || told.size() == steps.size()
        ? Optional.of(false)
        : Optional.empty();
  }
}
