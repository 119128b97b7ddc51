package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.casefile.Acceptance;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Words;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.bonewright.principles.Wording;

/** Makes the line of a verdict. */
final class LineMaker {

  private final RuleSet rules;
  private final Wording wording;
  private final CaseFile caseFile;
  private final LocalMaker local;

  LineMaker(RuleSet rules, CaseFile caseFile, LocalMaker local) {
    this.rules = rules;
    this.wording = new Wording(rules);
    this.caseFile = caseFile;
    this.local = local;
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
        unmet ? Remedy.of(judgement) : "",
        judgement.labels(),
        steps(judgement),
        otherView(judgement),
        accepted(judgement),
        card.sources().stream().noneMatch(Card.Source::read),
        card.why(),
        sources(card),
        readings(judgement),
        limits(judgement),
        workings(judgement),
        turns(judgement),
        local.note(judgement),
        judgement.share());
  }

  private List<String> steps(Judgement judgement) {
    List<String> steps = new ArrayList<>();
    if (judgement.verdict() instanceof Verdict.Unmet unmet && unmet.mildest() != unmet.severity()) {
      steps.add("or " + here(judgement.card(), unmet.mildest()).word() + ", by what is not known");
    }
    judgement.steps().forEach(step -> steps.add(step.inWords()));
    return steps;
  }

  private Severity here(Card card, Severity published) {
    return rules.site().map(site -> site.severity(card, published)).orElse(published);
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
            .map(a -> judgement.card().overridable() ? reason(a) : "not open to acceptance")
        : Optional.empty();
  }

  private static String reason(Acceptance acceptance) {
    return acceptance.reason() + " (" + acceptance.by() + ")";
  }

  private List<Line.Measured> readings(Judgement judgement) {
    List<Line.Measured> readings = new ArrayList<>();
    judgement
        .readings()
        .forEach(
            (need, reading) -> {
              Definition definition = definition(judgement.card().needs().getOrDefault(need, need));
              readings.add(
                  new Line.Measured(
                      definition.id(),
                      definition.title(),
                      reading.shown(),
                      unit(definition, reading),
                      kind(reading),
                      reading.working(),
                      sampled(reading)));
            });
    return List.copyOf(readings);
  }

  private static String unit(Definition definition, Reading reading) {
    return reading instanceof Reading.Amount || reading instanceof Reading.Sampled
        ? definition.shownUnit()
        : "";
  }

  private static String kind(Reading reading) {
    if (reading instanceof Reading.Amount amount) {
      return Words.of(amount.kind());
    }
    if (reading instanceof Reading.Word word) {
      return Words.of(word.kind());
    }
    if (reading instanceof Reading.Sampled) {
      return Words.of(Kind.MODEL);
    }
    return reading instanceof Reading.None ? "none" : "unknown";
  }

  private static Optional<Line.Sampled> sampled(Reading reading) {
    return reading instanceof Reading.Sampled model
        ? Optional.of(
            new Line.Sampled(
                model.rounded(model.nominal()),
                model.rounded(model.low()),
                model.rounded(model.high()),
                model.samples().size(),
                model.decides()))
        : Optional.empty();
  }

  private List<String> workings(Judgement judgement) {
    List<String> workings = new ArrayList<>();
    judgement
        .readings()
        .forEach(
            (need, reading) -> {
              Definition definition = definition(judgement.card().needs().getOrDefault(need, need));
              String how = reading.working().isEmpty() ? "" : " (" + reading.working() + ")";
              workings.add(
                  definition.title() + ": " + reading.shown(unit(definition, reading)) + how);
            });
    return List.copyOf(workings);
  }

  private static List<String> sources(Card card) {
    return card.sources().stream().map(Card.Source::shown).toList();
  }

  private static Map<String, String> limits(Judgement judgement) {
    Map<String, String> limits = new TreeMap<>();
    judgement.limits().forEach((name, value) -> limits.put(name, value.numbers()));
    return limits;
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
