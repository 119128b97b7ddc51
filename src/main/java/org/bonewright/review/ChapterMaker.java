package org.bonewright.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Subject;
import org.bonewright.measures.healing.Course;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;

/** Makes the account of one subject. */
final class ChapterMaker {

  private static final Comparator<Judgement> WORST_FIRST =
      Comparator.comparing((Judgement j) -> j.severity().orElse(Severity.NOTE))
          .reversed()
          .thenComparing(j -> j.family().order())
          .thenComparing(j -> j.card().id());

  private final LineMaker lines;
  private final RuleSet rules;
  private final JudgedCase whole;

  /**
   * Make it.
   *
   * @param whole the case with every verdict, also those that are not shown: a failure that one of
   *     them explains is not unexplained
   */
  ChapterMaker(LineMaker lines, RuleSet rules, JudgedCase whole) {
    this.lines = lines;
    this.rules = rules;
    this.whole = whole;
  }

  Chapter chapter(JudgedCase judged, Subject subject) {
    List<Judgement> judgements = judged.of(subject);
    List<Judgement> unmet = sorted(judgements, VerdictKind.UNMET);
    FailureReasons reasons = reasons(subject, unmet);
    boolean unexplained =
        reasons(subject, sorted(whole.of(subject), VerdictKind.UNMET)).unexplained();
    List<Judgement> unknown = sorted(judgements, VerdictKind.UNKNOWN);
    return new Chapter(
        subject.id(),
        subject.planned(),
        what(subject),
        subject.planned() ? Optional.empty() : Said.outcome(subject.operation()),
        unexplained,
        unexplained ? HostOnFile.before(subject) : List.of(),
        reasons.fits(),
        reasons.others(),
        sorted(judgements, VerdictKind.MET).stream().map(lines::line).toList(),
        unknown.stream().filter(j -> !nothingRecorded(subject, j)).map(lines::line).toList(),
        unknown.stream()
            .filter(j -> nothingRecorded(subject, j))
            .map(j -> j.card().title())
            .toList(),
        sorted(judgements, VerdictKind.NOT_APPLICABLE).size());
  }

  private FailureReasons reasons(Subject subject, List<Judgement> unmet) {
    return new FailureReasons(whole.scene(subject), unmet, rules.failures(), lines);
  }

  private static List<Judgement> sorted(List<Judgement> judgements, VerdictKind kind) {
    return judgements.stream().filter(j -> j.is(kind)).sorted(WORST_FIRST).toList();
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
