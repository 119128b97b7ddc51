package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether it is told how much bone is missing once dead bone is out. */
final class DefectStatement implements Measure {

  private static final double DEFECT_MM = 5;
  private static final String NOT_IN_QUESTION = "not-in-question";

  @Override
  public Definition definition() {
    return new Definition(
        "defect-statement",
        "What is told of the defect",
        Definition.words(NOT_IN_QUESTION, "after-resection", "before-only", "not-stated"),
        "after resection when the levels of a resection, or the gaps left at the end, are given;"
            + " before only when just the defect found beforehand is; else not stated. Not in"
            + " question when nothing is resected or debrided and neither the defect found nor the"
            + " gap left is 5 mm or more",
        List.of(
            "operations/resection",
            "operations/infectionCare/debridement",
            "operations/reduction/gapNearMm",
            "operations/reduction/gapFarMm",
            "findings/defectMm"),
        "5 mm: from memory; what counts as told is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    Optional<Quantity> gap = scene.operation().reduction().flatMap(Reduction::widestGap);
    Optional<Quantity> found = scene.subject().latest(Finding::defectMm);
    boolean cuts = steps.stream().anyMatch(DefectStatement::cuts);
    boolean large = atLeast(gap) || atLeast(found);
    boolean planned = scene.subject().planned();
    if (!cuts
        && !large
        && below(gap.or(() -> found))
        && steps.stream().allMatch(step -> cutsNothing(step, planned))) {
      return Reading.word(NOT_IN_QUESTION, "nothing cut, no gap");
    }
    boolean resected =
        steps.stream().anyMatch(s -> s.resection().map(r -> !r.isEmpty()).orElse(false));
    String told =
        resected || gap.isPresent()
            ? "after-resection"
            : found.isPresent() ? "before-only" : "not-stated";
    boolean certain = cuts || large || told.equals("after-resection");
    return Reading.words(
        certain ? Set.of(told) : Set.of(told, NOT_IN_QUESTION),
        Kind.FACT,
        told.replace('-', ' '),
        scene.missing(
            "resection", "Was bone cut out or debrided, and how much was missing afterwards?"));
  }

  private static boolean cuts(Operation step) {
    boolean debrided =
        step.infectionCare().flatMap(InfectionCare::debridement).equals(Optional.of(Answer.YES));
    return debrided || step.resection().map(cut -> !cut.isEmpty()).orElse(false);
  }

  private static boolean cutsNothing(Operation step, boolean planned) {
    Optional<Answer> debrided = step.infectionCare().flatMap(InfectionCare::debridement);
    boolean left = debrided.map(a -> a == Answer.NO).orElse(planned);
    return left && step.resection().map(List::isEmpty).orElse(false);
  }

  private static boolean atLeast(Optional<Quantity> mm) {
    return mm.map(q -> q.min() >= DEFECT_MM).orElse(false);
  }

  private static boolean below(Optional<Quantity> mm) {
    return mm.map(q -> q.max() < DEFECT_MM).orElse(false);
  }
}
