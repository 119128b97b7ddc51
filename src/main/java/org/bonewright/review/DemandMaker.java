package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Works out what a plan must achieve, as the history teaches it, and what it does about it. */
final class DemandMaker {

  private static final Comparator<PlanDemands.Demand> OPEN_FIRST =
      Comparator.comparingInt((PlanDemands.Demand d) -> rank(d.answer().verdict()))
          .thenComparing(
              Comparator.comparing(
                      (PlanDemands.Demand d) -> d.answer().severity().orElse(Severity.NOTE))
                  .reversed());

  private final JudgedCase judged;
  private final RuleSet rules;
  private final LineMaker lines;

  DemandMaker(JudgedCase judged, RuleSet rules, LineMaker lines) {
    this.judged = judged;
    this.rules = rules;
    this.lines = lines;
  }

  List<PlanDemands> demands() {
    return judged.caseFile().plans().stream().map(this::demands).toList();
  }

  private PlanDemands demands(Plan plan) {
    PlanVerdicts verdicts = new PlanVerdicts(judged, plan);
    List<PlanDemands.Demand> demands = new ArrayList<>();
    for (Card card : rules.cards()) {
      List<String> taughtBy = taughtBy(card);
      Optional<Judgement> answer = verdicts.worst(card.id());
      boolean open =
          answer.map(a -> a.is(VerdictKind.UNMET) || a.is(VerdictKind.UNKNOWN)).orElse(false);
      if (answer.isPresent() && (open || !taughtBy.isEmpty())) {
        demands.add(new PlanDemands.Demand(card.statement(), taughtBy, lines.line(answer.get())));
      }
    }
    demands.sort(OPEN_FIRST);
    return new PlanDemands(plan.id(), List.copyOf(demands));
  }

  private List<String> taughtBy(Card card) {
    return judged.subjects().stream()
        .filter(subject -> !subject.planned())
        .filter(
            subject ->
                judged.of(subject, card.id()).map(j -> j.is(VerdictKind.UNMET)).orElse(false))
        .map(Subject::id)
        .toList();
  }

  private static int rank(VerdictKind kind) {
    return switch (kind) {
      case UNMET -> 0;
      case UNKNOWN -> 1;
      case MET -> 2;
      case NOT_APPLICABLE -> 3;
    };
  }
}
