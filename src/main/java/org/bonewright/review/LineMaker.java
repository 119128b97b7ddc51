package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.Acceptance;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.bonewright.principles.Wording;

/** Makes the line of a verdict. */
final class LineMaker {

  private final RuleSet rules;
  private final Wording wording;
  private final CaseFile caseFile;

  LineMaker(RuleSet rules, CaseFile caseFile) {
    this.rules = rules;
    this.wording = new Wording(rules);
    this.caseFile = caseFile;
  }

  Line line(Judgement judgement) {
    Card card = judgement.card();
    boolean unmet = judgement.is(VerdictKind.UNMET);
    return new Line(
        card.id(),
        card.title(),
        judgement.subject(),
        judgement.verdict().kind(),
        judgement.severity(),
        wording.of(judgement),
        unmet ? card.remedy() : "",
        judgement.labels(),
        steps(judgement),
        otherView(judgement),
        accepted(judgement),
        card.sources().stream().noneMatch(Card.Source::read),
        workings(judgement),
        turns(judgement));
  }

  private static List<String> steps(Judgement judgement) {
    List<String> steps = new ArrayList<>();
    if (judgement.verdict() instanceof Verdict.Unmet unmet && unmet.mildest() != unmet.severity()) {
      steps.add("or " + unmet.mildest().word() + ", by what is not known");
    }
    judgement.steps().forEach(step -> steps.add(step.from().word() + "; " + step.why()));
    return steps;
  }

  private static Optional<String> otherView(Judgement judgement) {
    return judgement.verdict() instanceof Verdict.Unmet unmet
        ? judgement
            .card()
            .disputed()
            .filter(dispute -> dispute.limits().contains(unmet.limit()))
            .map(Card.Dispute::view)
        : Optional.empty();
  }

  private Optional<String> accepted(Judgement judgement) {
    String plan = judgement.subject().replaceFirst("/.*", "");
    return judgement.is(VerdictKind.UNMET)
        ? caseFile.accepted().stream()
            .filter(a -> a.principle().equals(judgement.card().id()))
            .filter(a -> a.on().equals(plan))
            .findFirst()
            .map(LineMaker::reason)
        : Optional.empty();
  }

  private static String reason(Acceptance acceptance) {
    return acceptance.reason() + " (" + acceptance.by() + ")";
  }

  private List<String> workings(Judgement judgement) {
    List<String> workings = new ArrayList<>();
    for (Map.Entry<String, Reading> entry : judgement.readings().entrySet()) {
      String measure = judgement.card().needs().getOrDefault(entry.getKey(), entry.getKey());
      Reading reading = entry.getValue();
      String how = reading.working().isEmpty() ? "" : " (" + reading.working() + ")";
      workings.add(definition(measure).title() + ": " + reading.shown() + how);
    }
    return workings;
  }

  private List<String> turns(Judgement judgement) {
    return judgement.turns().stream()
        .map(
            turn ->
                turn.verdict().word()
                    + " if "
                    + definition(judgement.card().needs().getOrDefault(turn.need(), turn.need()))
                        .title()
                    + " were "
                    + turn.to())
        .toList();
  }

  private Definition definition(String measure) {
    return rules.definition(measure);
  }
}
