package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Subject;
import org.bonewright.measures.healing.Course;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;

/** Makes the account of one subject. */
final class ChapterMaker {

  /** A gap in the notes makes no bone fail. */
  private static final String RECORDS = "records";

  private static final Comparator<Judgement> WORST_FIRST =
      Comparator.comparing((Judgement j) -> j.severity().orElse(Severity.NOTE))
          .reversed()
          .thenComparing(j -> j.family().order())
          .thenComparing(j -> j.card().id());

  private final LineMaker lines;
  private final RuleSet rules;

  ChapterMaker(LineMaker lines, RuleSet rules) {
    this.lines = lines;
    this.rules = rules;
  }

  Chapter chapter(Subject subject, List<Judgement> judgements) {
    List<String> fitting = fitting(subject);
    List<Headline> headlines =
        headlines(fittingFirst(sorted(judgements, VerdictKind.UNMET), fitting));
    List<Judgement> unknown = sorted(judgements, VerdictKind.UNKNOWN);
    return new Chapter(
        subject.id(),
        subject.planned(),
        what(subject),
        subject.planned() ? Optional.empty() : Said.outcome(subject.operation()),
        headlines.stream().allMatch(h -> h.cause().equals(RECORDS)) && failed(subject),
        headlines.stream().filter(h -> fits(h, fitting)).toList(),
        headlines.stream().filter(h -> !fits(h, fitting)).toList(),
        sorted(judgements, VerdictKind.MET).stream().map(lines::line).toList(),
        unknown.stream().filter(j -> !nothingRecorded(subject, j)).map(lines::line).toList(),
        unknown.stream()
            .filter(j -> nothingRecorded(subject, j))
            .map(j -> j.card().title())
            .toList(),
        sorted(judgements, VerdictKind.NOT_APPLICABLE).size());
  }

  private static boolean fits(Headline headline, List<String> fitting) {
    return Stream.concat(Stream.of(headline.lead()), headline.nested().stream())
        .map(Line::principle)
        .anyMatch(fitting::contains);
  }

  private static boolean failed(Subject subject) {
    return !subject.planned()
        && subject
            .operation()
            .outcome()
            .map(outcome -> outcome.result() == Outcome.Result.FAILED)
            .orElse(false);
  }

  private static List<Judgement> fittingFirst(List<Judgement> unmet, List<String> fitting) {
    return unmet.stream()
        .sorted(
            Comparator.comparingInt(
                j ->
                    fitting.contains(j.card().id())
                        ? fitting.indexOf(j.card().id())
                        : fitting.size()))
        .toList();
  }

  private static List<Judgement> sorted(List<Judgement> judgements, VerdictKind kind) {
    return judgements.stream().filter(j -> j.is(kind)).sorted(WORST_FIRST).toList();
  }

  /** The principles to look at for how an operation failed, in the order of the table. */
  private List<String> fitting(Subject subject) {
    return subject
        .operation()
        .outcome()
        .filter(outcome -> !subject.planned())
        .flatMap(Outcome::mode)
        .map(rules::principlesOf)
        .orElse(List.of());
  }

  /** What the past did not record at all is one line, not a row of unknowns. */
  private static boolean nothingRecorded(Subject subject, Judgement judgement) {
    return nothingOnInfection(subject, judgement) || noFilms(subject, judgement);
  }

  private static boolean noFilms(Subject subject, Judgement judgement) {
    return judgement.family().id().equals("diagnosis")
        && Course.after(subject)
            .flatMap(Course::findings)
            .map(found -> found.stream().allMatch(finding -> finding.films().isEmpty()))
            .orElse(false);
  }

  private static boolean nothingOnInfection(Subject subject, Judgement judgement) {
    return !subject.planned()
        && judgement.card().cause().equals("infection")
        && subject.latest(Finding::infection).isEmpty()
        && subject.operation().samples().isEmpty()
        && judgement.verdict() instanceof Verdict.Unknown;
  }

  private List<Headline> headlines(List<Judgement> inOrder) {
    Map<String, List<Line>> byCause = new LinkedHashMap<>();
    inOrder.forEach(
        j ->
            byCause
                .computeIfAbsent(j.card().cause(), cause -> new ArrayList<>())
                .add(lines.line(j)));
    List<Headline> headlines = new ArrayList<>();
    byCause.forEach((cause, found) -> headlines.add(gravestFirst(cause, found)));
    return headlines;
  }

  /**
   * A headline is as grave as the gravest that it covers; of equals the one that fits best leads.
   */
  private static Headline gravestFirst(String cause, List<Line> found) {
    List<Line> ordered = new ArrayList<>(found);
    ordered.sort(
        Comparator.comparing((Line line) -> line.severity().orElse(Severity.NOTE)).reversed());
    return new Headline(cause, ordered.get(0), List.copyOf(ordered.subList(1, ordered.size())));
  }

  private static String what(Subject subject) {
    if (subject.scope() == Subject.Scope.PLAN) {
      int stages = subject.steps().size();
      return "the plan as a whole" + (stages > 1 ? ", " + stages + " stages" : "");
    }
    Operation operation = subject.operation();
    String day = operation.day().map(ChapterMaker::day).orElse("");
    return day + Said.operation(operation);
  }

  private static String day(Quantity day) {
    return "day " + Said.numbers(day) + ": ";
  }
}
