package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Works out what a plan must achieve, as the history teaches it, and what it does about it. */
final class DemandMaker {

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
      verdicts.telling(card.id()).stream()
          .filter(answer -> !answer.is(VerdictKind.NOT_APPLICABLE) || !taughtBy.isEmpty())
          .map(answer -> new PlanDemands.Demand(card.statement(), taughtBy, lines.line(answer)))
          .forEach(demands::add);
    }
    demands.sort(openFirst());
    return new PlanDemands(
        plan.id(),
        PlanVerdicts.decisive(judged.caseFile()).contains(plan),
        List.copyOf(demands),
        tensions(demands));
  }

  /** Where two principles are unmet whose remedies undo each other, a list of both misleads. */
  private List<String> tensions(List<PlanDemands.Demand> demands) {
    Set<String> unmet =
        demands.stream()
            .map(PlanDemands.Demand::answer)
            .filter(answer -> answer.verdict() == VerdictKind.UNMET)
            .map(Line::principle)
            .collect(Collectors.toSet());
    return rules.moves().tensions().stream()
        .filter(tension -> unmet.containsAll(tension.between()))
        .map(
            tension ->
                rules.cards().stream()
                        .filter(card -> tension.between().contains(card.id()))
                        .map(Card::title)
                        .collect(Collectors.joining(" against "))
                    + ": "
                    + tension.settled())
        .toList();
  }

  /**
   * What is open first, by severity; of equal ones a principle that nobody may accept, and then
   * what is certain.
   */
  private Comparator<PlanDemands.Demand> openFirst() {
    return Comparator.comparingInt((PlanDemands.Demand d) -> group(d.answer().verdict()))
        .thenComparing(
            Comparator.comparing(
                    (PlanDemands.Demand d) -> d.answer().severity().orElse(Severity.NOTE))
                .reversed())
        .thenComparing(d -> rules.card(d.answer().principle()).map(Card::overridable).orElse(true))
        .thenComparing(d -> d.answer().verdict());
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

  private static int group(VerdictKind kind) {
    return switch (kind) {
      case UNMET, UNKNOWN -> 0;
      case MET -> 1;
      case NOT_APPLICABLE -> 2;
    };
  }
}
