package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Definition;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Tracer;
import org.bonewright.principles.Verdict;

/** Explains verdicts. Make one and keep it; it may be shared by threads. */
public final class Explainer {

  private final RuleSet rules;
  private final Judge judge;
  private final Tracer tracer;

  /** Make an explainer with these rules. */
  public Explainer(RuleSet rules) {
    this.rules = rules;
    this.judge = new Judge(rules);
    this.tracer = new Tracer(rules);
  }

  /** Judge a case that was read and found consistent; then anything in it can be explained. */
  public Explained of(CaseFile caseFile) {
    return new Explained(judge.judge(caseFile));
  }

  /** A judged case, ready to be explained. */
  public final class Explained {

    private final JudgedCase judged;
    private final LineMaker lines;

    private Explained(JudgedCase judged) {
      this.judged = judged;
      this.lines = new LineMaker(rules, judged.caseFile(), new LocalMaker(rules, judged));
    }

    /**
     * Return the explanations of one principle on one subject. Where a plan is named and the
     * principle is judged on its stages, there is one for each stage.
     *
     * @param principle id of the principle
     * @param subject id of the operation, plan or stage
     * @return nothing where the principle is not judged there
     */
    public List<Explanation> on(String principle, String subject) {
      List<Judgement> own = of(principle).filter(j -> j.subject().equals(subject)).toList();
      List<Judgement> found =
          own.isEmpty()
              ? of(principle).filter(j -> j.subject().startsWith(subject + "/")).toList()
              : own;
      return found.stream().map(this::explanation).toList();
    }

    /** Return the ids of the subjects on which a principle is judged, in order of time. */
    public List<String> judgedOn(String principle) {
      return of(principle).map(Judgement::subject).toList();
    }

    /** Return the explanation of every verdict, in order of time and of the cards. */
    public Stream<Explanation> all() {
      return judged.subjects().stream()
          .flatMap(subject -> judged.of(subject).stream())
          .map(this::explanation);
    }

    private Stream<Judgement> of(String principle) {
      return judged.subjects().stream()
          .flatMap((Subject subject) -> judged.of(subject, principle).stream());
    }

    private Explanation explanation(Judgement judgement) {
      Card card = judgement.card();
      Line line = lines.line(judgement);
      return new Explanation(
          line,
          judgement.family().title(),
          card.statement(),
          line.readings().stream().map(Explainer.this::input).toList(),
          limits(judgement),
          tracer.trace(judgement),
          asks(judgement.verdict()),
          card.disputed().map(Card.Dispute::view),
          card.awaiting(),
          card.reviewedBy(),
          Reviewer.versions(rules, rules.usual()));
    }
  }

  private Explanation.Input input(Line.Measured reading) {
    Definition definition = rules.definition(reading.measure());
    return new Explanation.Input(
        reading, definition.formula(), definition.inputs(), definition.source());
  }

  private List<Explanation.HeldLimit> limits(Judgement judgement) {
    List<Explanation.HeldLimit> held = new ArrayList<>();
    Card card = judgement.card();
    judgement
        .limits()
        .forEach(
            (name, value) -> {
              Card.Limit limit = card.limits().get(name);
              if (limit != null) {
                Definition cut =
                    rules.definition(card.needs().getOrDefault(limit.of(), limit.of()));
                held.add(
                    new Explanation.HeldLimit(
                        name, cut.title(), value.numbers(), cut.shownUnit(), limit.evidence()));
              }
            });
    return held;
  }

  private static List<String> asks(Verdict verdict) {
    return verdict instanceof Verdict.Unknown unknown
        ? Stream.concat(unknown.settles().stream(), unknown.asks().stream())
            .map(MissingFact::question)
            .distinct()
            .toList()
        : List.of();
  }
}
