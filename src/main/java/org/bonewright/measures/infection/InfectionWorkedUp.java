package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.SampleResult;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;

/** Whether a suspicion of infection is worked up before graft and final metal go in. */
final class InfectionWorkedUp implements Measure {

  private static final double MARKERS_ARE_FRESH_DAYS = 30;

  /** One sample that grows nothing excludes nothing. */
  private static final double SAMPLES_THAT_COUNT = 2;

  /** What is known of one part. */
  private enum Part {
    YES,
    NO,
    OPEN
  }

  @Override
  public Definition definition() {
    return new Definition(
        "infection-worked-up",
        "Infection worked up",
        Definition.yesOrNo(),
        "yes when the C-reactive protein was taken within 30 days (in a plan: of the latest"
            + " finding), and either two or more deep samples before grew nothing, or the plan samples, says who acts on"
            + " the result, and leaves graft, plate, nail and strut to a later stage",
        List.of(
            "findings/infection/crpMgL",
            "findings/infection/samples",
            "operations/samples",
            "plans/resultPath"),
        "consensus on fracture-related infection 2018 and 2020; the time limits are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<MissingFact> missing = new ArrayList<>();
    Part markers = markers(scene.subject());
    if (markers == Part.OPEN) {
      missing.add(
          scene.missingInCase(
              "findings/infection/crpMgL", "When was the C-reactive protein last taken?"));
    }
    Part samples = negativeSamples(scene.subject());
    if (samples == Part.OPEN) {
      missing.add(
          scene.missingInCase(
              "findings/infection/samples", "Were deep samples taken, and what did they grow?"));
    }
    Part staged = staged(scene.subject());
    if (staged == Part.OPEN) {
      missing.add(
          scene.missing("samples", "Was the site sampled, and graft and metal left for later?"));
    }
    if (markers == Part.NO) {
      return Reading.word("no", "no C-reactive protein within 30 days");
    }
    if (samples == Part.NO && staged == Part.NO) {
      return Reading.word(
          "no", "no negative deep samples, and no sampling ahead of graft and metal");
    }
    boolean either = samples == Part.YES || staged == Part.YES;
    return markers == Part.YES && either
        ? Reading.word("yes", samples == Part.YES ? "deep samples negative" : "sampled first")
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "cannot be told", missing.toArray(MissingFact[]::new));
  }

  private static Part markers(Subject subject) {
    List<Finding> findings = subject.findings();
    Optional<Quantity> day =
        subject.planned()
            ? findings.stream().findFirst().map(Finding::day)
            : subject.operation().day();
    if (day.isEmpty()) {
      return Part.OPEN;
    }
    boolean fresh =
        findings.stream()
            .filter(f -> f.infection().flatMap(InfectionSigns::crpMgL).isPresent())
            .anyMatch(f -> day.get().middle() - f.day().middle() <= MARKERS_ARE_FRESH_DAYS);
    // In the past a marker that no finding names may still have been taken.
    return fresh ? Part.YES : subject.planned() ? Part.NO : Part.OPEN;
  }

  private static Part negativeSamples(Subject subject) {
    Optional<SampleResult> samples =
        subject.latest(finding -> finding.infection().flatMap(InfectionSigns::samples));
    if (samples.isEmpty()) {
      return Part.OPEN;
    }
    if (samples.get().taken().max() < SAMPLES_THAT_COUNT) {
      return Part.NO;
    }
    Optional<Quantity> grown = samples.get().sameOrganism();
    if (grown.isEmpty()) {
      return Part.OPEN;
    }
    if (grown.get().min() > 0) {
      return Part.NO;
    }
    return grown.get().max() <= 0 && samples.get().taken().min() >= SAMPLES_THAT_COUNT
        ? Part.YES
        : Part.OPEN;
  }

  private static Part staged(Subject subject) {
    if (!subject.planned()) {
      return definitive(subject.operation()) ? Part.NO : Part.OPEN;
    }
    boolean path =
        subject.caseFile().plans().stream()
            .filter(plan -> plan.id().equals(subject.id()))
            .map(Plan::resultPath)
            .anyMatch(Optional::isPresent);
    for (Operation stage : subject.steps()) {
      if (definitive(stage)) {
        return Part.NO;
      }
      if (stage.samples().map(s -> s.deepSamples().min() >= 1).orElse(false)) {
        return path ? Part.YES : Part.NO;
      }
    }
    return Part.NO;
  }

  private static boolean definitive(Operation step) {
    boolean metal =
        step.fixation().stream()
            .flatMap(List::stream)
            .anyMatch(i -> i instanceof Plate || i instanceof Nail || i instanceof Strut);
    boolean graft =
        step.biology().stream().flatMap(List::stream).anyMatch(g -> g.kind() != Graft.Kind.SPACER);
    return metal || graft;
  }
}
