package org.bonewright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.SampleShare;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;

/** A case with verdicts put there by hand, whatever its surgery would have earned. */
final class JudgedByHand {

  static final RuleSet RULES = RuleSet.built();

  private final CaseFile file;
  private final Map<String, List<Judgement>> judgements = new LinkedHashMap<>();

  private JudgedByHand(CaseFile file) {
    this.file = file;
  }

  /** Begin with a case on which nothing was judged yet. */
  static JudgedByHand of(CaseText text) {
    return new JudgedByHand(text.file());
  }

  static Card card(String principle) {
    return RULES.card(principle).orElseThrow();
  }

  /** Return what to know about a question. */
  static MissingFact fact(String field) {
    return new MissingFact(field, "What about " + field + "?");
  }

  JudgedByHand unmet(String subject, String principle, Severity severity) {
    String limit = card(principle).say().unmet().keySet().iterator().next();
    return put(
        subject, principle, new Verdict.Unmet(severity, severity, limit, List.of(limit)), severity);
  }

  /** Put what may still be met or unmet; every fact asked for, some of which settle it alone. */
  JudgedByHand unknown(
      String subject,
      String principle,
      Severity worst,
      List<MissingFact> asks,
      List<MissingFact> settles) {
    Set<VerdictKind> possible = Set.of(VerdictKind.MET, VerdictKind.UNMET);
    return put(subject, principle, new Verdict.Unknown(possible, worst, asks, settles), worst);
  }

  JudgedByHand met(String subject, String principle) {
    return put(subject, principle, new Verdict.Met(), Optional.empty(), Optional.empty());
  }

  JudgedByHand notApplicable(String subject, String principle) {
    return put(subject, principle, new Verdict.NotApplicable(), Optional.empty(), Optional.empty());
  }

  /** Put what nobody needs to ask about: samples of a model are split. */
  JudgedByHand split(String subject, String principle, Severity worst) {
    return put(
        subject,
        principle,
        new Verdict.Unknown(
            Set.of(VerdictKind.MET, VerdictKind.UNMET), worst, List.of(), List.of()),
        Optional.of(worst),
        Optional.of(
            new SampleShare(
                200, List.of(new SampleShare.Count(VerdictKind.UNMET, 100, 100)), "the load")));
  }

  private JudgedByHand put(String subject, String principle, Verdict verdict, Severity severity) {
    return put(subject, principle, verdict, Optional.of(severity), Optional.empty());
  }

  JudgedByHand put(
      String subject,
      String principle,
      Verdict verdict,
      Optional<Severity> severity,
      Optional<SampleShare> share) {
    Card card = card(principle);
    judgements
        .computeIfAbsent(subject, s -> new ArrayList<>())
        .add(
            new Judgement(
                card,
                RULES.family(card),
                subject,
                verdict,
                severity,
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                List.of(),
                share));
    return this;
  }

  /** Return the verdicts on a subject. */
  List<Judgement> of(String subject) {
    return judgements.getOrDefault(subject, List.of());
  }

  /** Return the case with these verdicts and no others. */
  JudgedCase judged() {
    List<Subject> subjects = Subject.of(file);
    Map<String, Scene> scenes = new HashMap<>();
    subjects.forEach(s -> scenes.put(s.id(), new Scene(s, EveryMeasure.catalogue())));
    return new JudgedCase(file, subjects, scenes, judgements);
  }

  /** Return what makes lines of them. */
  LineMaker lines() {
    return new LineMaker(RULES, file, new LocalMaker(RULES, judged()));
  }
}
