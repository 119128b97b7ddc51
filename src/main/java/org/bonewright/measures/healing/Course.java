package org.bonewright.measures.healing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.NonOperativeTreatment;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Subject;

/**
 * The time from an operation, or from the injury where none came before, until something else was
 * done: what was found in it, and how long it lasted.
 */
public final class Course {

  private static final int AT_INJURY = -1;
  private static final double DAYS_A_WEEK = 7;

  private final CaseFile caseFile;
  private final int from;
  private final int to;

  /** Whether it may have begun earlier, since the operation does not say what it put in. */
  private final boolean mayBeEarlier;

  private Course(CaseFile caseFile, int from, int to, boolean mayBeEarlier) {
    this.caseFile = caseFile;
    this.from = from;
    this.to = to;
    this.mayBeEarlier = mayBeEarlier;
  }

  /** Return the time after an operation that was done; empty for what is still planned. */
  public static Optional<Course> after(Subject subject) {
    int at = subject.before().size();
    return subject.planned()
        ? Optional.empty()
        : Optional.of(new Course(subject.caseFile(), at, at + 1, false));
  }

  /**
   * Return the time that led to a subject: since the last operation that was more than a stage and
   * put in metal or graft; since the injury where there was none. Where an operation does not say
   * what it put in, it is not known whether the time began with it.
   */
  static Course leadingTo(Subject subject) {
    List<Operation> operations = subject.caseFile().operations();
    int to = Math.min(subject.before().size(), operations.size());
    int from = to - 1;
    while (from > AT_INJURY && setOut(operations.get(from)) == Answer.NO) {
      from--;
    }
    boolean mayBeEarlier = from > AT_INJURY && setOut(operations.get(from)) == Answer.UNKNOWN;
    return new Course(subject.caseFile(), from, to, mayBeEarlier);
  }

  /** Return the time that a case as it stands looks back on. */
  static Course standing(Subject subject) {
    return after(subject).orElseGet(() -> leadingTo(subject));
  }

  /** Return the time from the injury to the first operation, or up to now where there is none. */
  static Course beforeAnyOperation(CaseFile caseFile) {
    return new Course(caseFile, AT_INJURY, 0, false);
  }

  /** Return whether an operation was more than a stage and put in metal or graft. */
  private static Answer setOut(Operation operation) {
    if (operation.wasOnlyAStage()) {
      return Answer.NO;
    }
    boolean something =
        operation.fixation().map(put -> !put.isEmpty()).orElse(false)
            || operation.biology().map(grafts -> !grafts.isEmpty()).orElse(false);
    boolean told = operation.fixation().isPresent() && operation.biology().isPresent();
    return something ? Answer.YES : told ? Answer.NO : Answer.UNKNOWN;
  }

  /** A film with the day on which it was read. */
  record DatedFilm(Quantity day, Film film) {}

  /** Return the operation that began it; empty where the injury did, or it is not known which. */
  Optional<Operation> operation() {
    return from == AT_INJURY || mayBeEarlier
        ? Optional.empty()
        : Optional.of(caseFile.operations().get(from));
  }

  /** Return the operations done in it: bolts out, pieces removed, a wound washed out. */
  List<Operation> operationsSince() {
    List<Operation> all = caseFile.operations();
    return all.subList(Math.min(from + 1, to), Math.min(to, all.size()));
  }

  /** Return whether it is known which operation began it, or that the injury did. */
  boolean beginningIsKnown() {
    return !mayBeEarlier;
  }

  /** Return the day on which it began, where it is told. */
  Optional<Quantity> began() {
    if (mayBeEarlier) {
      return Optional.empty();
    }
    return from == AT_INJURY ? Optional.of(Quantity.of(0)) : caseFile.operations().get(from).day();
  }

  /**
   * Return what was found in it, in order of day; empty where a day is missing, so that a finding
   * cannot be placed. What was found on the day of an operation was found before it.
   */
  public Optional<List<Finding>> findings() {
    Optional<Quantity> began = began();
    boolean open = !endsWithAnOperation();
    Optional<Quantity> ended = open ? Optional.empty() : caseFile.operations().get(to).day();
    if (began.isEmpty() || (!open && ended.isEmpty())) {
      return Optional.empty();
    }
    double after = from == AT_INJURY ? AT_INJURY : began.get().middle();
    double until = ended.map(Quantity::middle).orElse(Double.POSITIVE_INFINITY);
    return Optional.of(
        caseFile.findings().stream()
            .filter(f -> f.day().middle() > after && f.day().middle() <= until)
            .sorted(Comparator.comparingDouble(f -> f.day().middle()))
            .toList());
  }

  /** Return the films among some findings, in order of day. */
  static List<DatedFilm> films(List<Finding> findings) {
    List<DatedFilm> films = new ArrayList<>();
    findings.forEach(f -> f.films().forEach(film -> films.add(new DatedFilm(f.day(), film))));
    return films;
  }

  /**
   * Return the day on which it ended, or up to which it is known: that of the next operation, else
   * of the last finding.
   */
  Optional<Quantity> lastDay() {
    return endsWithAnOperation()
        ? caseFile.operations().get(to).day()
        : findings()
            .filter(found -> !found.isEmpty())
            .map(found -> found.get(found.size() - 1).day());
  }

  /** Return whether an operation ended it; else it goes on. */
  boolean endsWithAnOperation() {
    return to < caseFile.operations().size();
  }

  /** Return all treatment without an operation in the case. */
  List<NonOperativeTreatment> nonOperative() {
    return caseFile.nonOperative();
  }

  /** Return how long it had lasted on a day, in weeks, where its beginning is told. */
  Optional<Dimension> weeksAt(Quantity day) {
    return began().map(began -> weeks(began, day));
  }

  /** Return the time between two days in weeks; never below zero. */
  static Dimension weeks(Quantity first, Quantity last) {
    double least = Math.max(0, (last.min() - first.max()) / DAYS_A_WEEK);
    double most = Math.max(least, (last.max() - first.min()) / DAYS_A_WEEK);
    return new Dimension(least, most, false, "");
  }

  /** Return what is missing where findings cannot be placed: a day, or what was put in. */
  MissingFact missingDay() {
    if (mayBeEarlier) {
      Operation silent = caseFile.operations().get(from);
      String field = silent.fixation().isEmpty() ? "fixation" : "biology";
      return new MissingFact(
          silent.id() + "/" + field, "Which implants and which graft were put in, if any?");
    }
    String id = caseFile.operations().get(began().isEmpty() ? from : to).id();
    return new MissingFact(id + "/day", "On which day, roughly, was " + id + "?");
  }
}
