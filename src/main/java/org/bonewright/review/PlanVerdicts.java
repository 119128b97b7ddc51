package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;

/** The verdicts on a plan: those on the plan as a whole and those on each of its stages. */
final class PlanVerdicts {

  /**
   * The worse of two verdicts first: by severity of what is or may be unmet, unmet before unknown.
   */
  private static final Comparator<Judgement> WORST_FIRST =
      Comparator.comparingInt(PlanVerdicts::rank)
          .thenComparing(
              Comparator.comparing((Judgement j) -> j.severity().orElse(Severity.NOTE)).reversed())
          .thenComparing(j -> j.is(VerdictKind.UNMET) ? 0 : 1)
          .thenComparing(Judgement::subject);

  private final JudgedCase judged;
  private final Plan plan;

  PlanVerdicts(JudgedCase judged, Plan plan) {
    this.judged = judged;
    this.plan = plan;
  }

  private static int rank(Judgement judgement) {
    return switch (judgement.verdict().kind()) {
      case UNMET, UNKNOWN -> 0;
      case MET -> 1;
      case NOT_APPLICABLE -> 2;
    };
  }

  /** Return every verdict on the plan and its stages. */
  List<Judgement> all() {
    List<Judgement> all = new ArrayList<>();
    for (Subject subject : judged.subjects()) {
      if (subject.planned() && subject.id().replaceFirst("/.*", "").equals(plan.id())) {
        all.addAll(judged.of(subject));
      }
    }
    return all;
  }

  /** Return the worst verdict of one principle on the plan, if it concerns it. */
  Optional<Judgement> worst(String principle) {
    return all().stream().filter(j -> j.card().id().equals(principle)).min(WORST_FIRST);
  }

  /**
   * Return the verdicts of one principle that tell about the plan: the worst unmet and the worst
   * unknown one where there are such, else the best of the rest.
   */
  List<Judgement> telling(String principle) {
    List<Judgement> mine =
        all().stream().filter(j -> j.card().id().equals(principle)).sorted(WORST_FIRST).toList();
    List<Judgement> open = new ArrayList<>();
    mine.stream().filter(j -> j.is(VerdictKind.UNMET)).findFirst().ifPresent(open::add);
    mine.stream().filter(j -> j.is(VerdictKind.UNKNOWN)).findFirst().ifPresent(open::add);
    return open.isEmpty() ? mine.stream().limit(1).toList() : open;
  }

  /**
   * Return whether a critical principle is unmet, or unknown for want of an answer or because the
   * samples of a model are split: the plan can still be changed.
   */
  boolean leavesCriticalOpen() {
    return all().stream()
        .filter(j -> j.severity().equals(Optional.of(Severity.CRITICAL)))
        .anyMatch(
            j ->
                j.is(VerdictKind.UNMET)
                    || (j.verdict() instanceof Verdict.Unknown unknown
                        && (!unknown.asks().isEmpty() || j.share().isPresent())));
  }

  /** Return the plans that are to be carried out: the chosen one, or all where none is chosen. */
  static List<Plan> decisive(CaseFile caseFile) {
    List<Plan> chosen =
        caseFile.plans().stream().filter(plan -> plan.chosen().orElse(false)).toList();
    return chosen.isEmpty() ? caseFile.plans() : chosen;
  }
}
