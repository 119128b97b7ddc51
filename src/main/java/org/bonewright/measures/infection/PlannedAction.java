package org.bonewright.measures.infection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Sampling;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Actions against infection, over every stage. A plan is closed: what it does not name is not
 * planned. In the past what is not recorded is unknown.
 */
final class PlannedAction implements Measure {

  private static final double CULTURE_DAYS_MOST = 42;

  /** What is looked for. */
  enum Action {
    /** Separate deep samples in one stage, the largest number. */
    DEEP_SAMPLES,
    /** A sample for histology. */
    HISTOLOGY,
    /** Days of culture. */
    CULTURE_DAYS,
    /** Debridement, sampling and antibiotics together. */
    INFECTION_DIRECTED
  }

  private final Action action;

  PlannedAction(Action action) {
    this.action = action;
  }

  @Override
  public Definition definition() {
    return switch (action) {
      case DEEP_SAMPLES ->
          new Definition(
              "deep-samples",
              "Deep samples",
              Definition.count(1),
              "separate deep tissue or implant samples taken, or planned, in one stage; the largest"
                  + " number. Not in a plan: zero",
              List.of("operations/samples/deepSamples"),
              "Dudareva et al., JBJS Am 2021, for its meaning");
      case HISTOLOGY ->
          new Definition(
              "histology-sample",
              "A sample for histology",
              Definition.yesOrNo(),
              "yes when one more sample goes to histology; not in a plan: no",
              List.of("operations/samples/histology"),
              "Govaert et al., J Orthop Trauma 2020, for its meaning");
      case CULTURE_DAYS ->
          new Definition(
              "culture-days",
              "Days of culture",
              new Definition.Domain.Numbers("d", "days", 0, CULTURE_DAYS_MOST, 0),
              "as stated; the longest of the stages",
              List.of("operations/samples/cultureDays"),
              "the case file");
      case INFECTION_DIRECTED ->
          new Definition(
              "infection-directed",
              "Directed at infection",
              Definition.yesOrNo(),
              "yes when debridement, at least one deep sample and antibiotics are part of it, in any"
                  + " stage; not in a plan: no",
              List.of(
                  "operations/infectionCare/debridement",
                  "operations/samples",
                  "operations/infectionCare/antibioticWeeks"),
              "the core of the consensus on treatment (Metsemakers et al. 2018; McNally et al."
                  + " 2020); what counts as directed is our convention");
    };
  }

  @Override
  public Reading take(Scene scene) {
    return switch (action) {
      case DEEP_SAMPLES -> deepSamples(scene);
      case HISTOLOGY -> histology(scene);
      case CULTURE_DAYS -> cultureDays(scene);
      case INFECTION_DIRECTED -> directed(scene);
    };
  }

  private static MissingFact asked(Scene scene) {
    return scene.missing(
        "samples", "How many deep samples were taken, was one for histology, how long cultured?");
  }

  private static Reading deepSamples(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    boolean told = steps.stream().anyMatch(step -> step.samples().isPresent());
    if (!told && !scene.subject().planned()) {
      return Reading.unknown(asked(scene));
    }
    double min = most(steps, Quantity::min);
    double max = most(steps, Quantity::max);
    return new Reading.Amount(
        min,
        max,
        Kind.FACT,
        told ? "as stated" : "no sampling planned",
        min == max ? List.of() : List.of(asked(scene)));
  }

  private static double most(List<Operation> steps, Function<Quantity, Double> bound) {
    return steps.stream()
        .flatMap(step -> step.samples().stream())
        .mapToDouble(samples -> bound.apply(samples.deepSamples()))
        .max()
        .orElse(0);
  }

  private static Reading histology(Scene scene) {
    List<Answer> answers =
        scene.subject().steps().stream()
            .flatMap(step -> step.samples().flatMap(Sampling::histology).stream())
            .toList();
    if (answers.contains(Answer.YES)) {
      return Reading.word("yes", "histology stated");
    }
    boolean open = answers.isEmpty() && !scene.subject().planned();
    return open || answers.contains(Answer.UNKNOWN)
        ? Reading.unknown(asked(scene))
        : Reading.word("no", answers.isEmpty() ? "no histology planned" : "stated as not taken");
  }

  private static Reading cultureDays(Scene scene) {
    List<Sampling> samplings =
        scene.subject().steps().stream().flatMap(step -> step.samples().stream()).toList();
    List<Quantity> days = samplings.stream().flatMap(s -> s.cultureDays().stream()).toList();
    MissingFact missing =
        scene.missing("samples/cultureDays", "For how many days are samples cultured?");
    if (!days.isEmpty()) {
      Dimension longest =
          new Dimension(
              days.stream().mapToDouble(Quantity::min).max().orElseThrow(),
              days.stream().mapToDouble(Quantity::max).max().orElseThrow(),
              false,
              "");
      return Reading.number(longest, "as stated", missing);
    }
    return samplings.isEmpty() && scene.subject().planned()
        ? new Reading.None("no sampling planned")
        : Reading.unknown(missing);
  }

  private static Reading directed(Scene scene) {
    Map<String, TreatmentPart> parts = new LinkedHashMap<>();
    parts.put(
        "debridement",
        TreatmentPart.of(
            scene,
            step ->
                step.infectionCare().flatMap(InfectionCare::debridement).map(TreatmentPart::of)));
    parts.put(
        "sampling",
        TreatmentPart.of(
            scene,
            step -> step.samples().map(Sampling::deepSamples).map(TreatmentPart::atLeastOne)));
    parts.put(
        "antibiotics",
        TreatmentPart.of(
            scene,
            step ->
                step.infectionCare()
                    .flatMap(InfectionCare::antibioticWeeks)
                    .map(TreatmentPart::someTime)));
    List<String> lacking = named(parts, TreatmentPart.NO);
    if (!lacking.isEmpty()) {
      return Reading.word("no", "missing: " + String.join(", ", lacking));
    }
    List<String> open = named(parts, TreatmentPart.UNKNOWN);
    return open.isEmpty()
        ? Reading.word("yes", "debridement, sampling and antibiotics")
        : Reading.unknown(
            scene.missing(
                "infectionCare", "Was the site debrided, sampled and covered by antibiotics?"));
  }

  private static List<String> named(Map<String, TreatmentPart> parts, TreatmentPart which) {
    return parts.entrySet().stream()
        .filter(part -> part.getValue() == which)
        .map(Map.Entry::getKey)
        .toList();
  }
}
