package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Subject;
import org.bonewright.measures.infection.InfectionStages;

/** Applies the rules about the rules: labels and steps of severity. It never changes a verdict. */
final class Precedence {

  private final RuleBase rules;
  private final Optional<SiteChanges> site;

  /**
   * Make it.
   *
   * @param rules the rules about the rules
   * @param site what a site has changed, if one has
   */
  Precedence(RuleBase rules, Optional<SiteChanges> site) {
    this.rules = rules;
    this.site = site;
  }

  /** Return the severity that a verdict has before any step. */
  static Optional<Severity> baseSeverity(Verdict verdict) {
    if (verdict instanceof Verdict.Unmet unmet) {
      return Optional.of(unmet.severity());
    }
    return verdict instanceof Verdict.Unknown unknown
            && unknown.possible().contains(VerdictKind.UNMET)
        ? Optional.of(unknown.worst())
        : Optional.empty();
  }

  JudgedCase apply(JudgedCase judged) {
    List<Object> facts = new ArrayList<>();
    judged.subjects().forEach(subject -> facts.add(course(judged, subject)));
    for (Subject subject : judged.subjects()) {
      judged.of(subject).forEach(judgement -> facts.add(fact(subject, judgement)));
    }
    Decisions decisions = rules.decide(facts);
    Map<String, List<Judgement>> decided = new LinkedHashMap<>();
    for (Subject subject : judged.subjects()) {
      decided.put(
          subject.id(),
          judged.of(subject).stream().map(j -> decided(subject, j, decisions)).toList());
    }
    return new JudgedCase(judged.caseFile(), judged.subjects(), judged.scenes(), decided);
  }

  private static Course course(JudgedCase judged, Subject subject) {
    boolean infected =
        Optional.ofNullable(judged.scenes().get(subject.id()))
            .map(scene -> scene.read("confirmatory-signs"))
            .map(reading -> reading instanceof Reading.Amount n && n.min() >= 1)
            .orElse(false);
    boolean united =
        !subject.planned()
            && subject
                .operation()
                .outcome()
                .map(outcome -> outcome.result() == Outcome.Result.UNITED)
                .orElse(false);
    InfectionStages stages = InfectionStages.of(subject);
    return new Course(subject.id(), infected, stages.treatedBefore(), stages.stageAfter(), united);
  }

  private static Judged fact(Subject subject, Judgement judgement) {
    boolean disputed =
        judgement.verdict() instanceof Verdict.Unmet unmet
            && judgement
                .card()
                .disputed()
                .map(dispute -> dispute.limits().contains(unmet.limit()))
                .orElse(false);
    int round =
        subject.planned() ? subject.caseFile().operations().size() : subject.before().size();
    return new Judged(
        judgement.card().id(),
        judgement.family().id(),
        judgement.card().cause(),
        subject.id(),
        round,
        judgement.verdict().kind().word(),
        disputed);
  }

  /** What the site has set comes first, so that outcome, dispute and repeat count from there. */
  private List<SeverityStep> steps(Judgement judgement, Severity base, Judged fact, Decisions by) {
    Severity local = site.map(s -> s.severity(judgement.card(), base)).orElse(base);
    List<SeverityStep> steps = new ArrayList<>();
    if (local != base) {
      steps.add(new SeverityStep(Decisions.Step.SITE, base, local));
    }
    steps.addAll(by.steps(fact, local, judgement.card().highest()));
    return List.copyOf(steps);
  }

  private Judgement decided(Subject subject, Judgement judgement, Decisions decisions) {
    Judged fact = fact(subject, judgement);
    List<SeverityStep> steps =
        judgement.severity().map(base -> steps(judgement, base, fact, decisions)).orElse(List.of());
    Optional<Severity> severity =
        steps.isEmpty() ? judgement.severity() : Optional.of(steps.get(steps.size() - 1).to());
    return new Judgement(
        judgement.card(),
        judgement.family(),
        judgement.subject(),
        judgement.verdict(),
        severity,
        steps,
        decisions.labels(fact),
        judgement.readings(),
        judgement.limits(),
        judgement.turns(),
        judgement.share());
  }
}
