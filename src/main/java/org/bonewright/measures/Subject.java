package org.bonewright.measures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Quantity;

/**
 * What is judged: a past operation, one stage of a plan, or a plan as a whole; always with what was
 * known when it began.
 *
 * @param id id used in the review: {@code op-2}, {@code plan-a}, {@code plan-a/stage-1}
 * @param scope what kind of subject it is
 * @param caseFile the case
 * @param steps the operation itself, or every stage of the plan, in order
 * @param before every operation before it, in order
 */
public record Subject(
    String id, Scope scope, CaseFile caseFile, List<Operation> steps, List<Operation> before) {

  /** Kinds of subject. */
  public enum Scope {
    /** An operation that was done. */
    OPERATION,
    /** One stage of a plan. */
    STAGE,
    /** A plan with all its stages. */
    PLAN
  }

  public Subject {
    steps = List.copyOf(steps);
    before = List.copyOf(before);
  }

  /**
   * Return every subject of a case: the operations, then for each plan its stages and itself. A
   * plan without a stage holds nothing to judge and is no subject.
   */
  public static List<Subject> of(CaseFile caseFile) {
    List<Subject> subjects = new ArrayList<>();
    List<Operation> done = caseFile.operations();
    for (int i = 0; i < done.size(); i++) {
      subjects.add(
          new Subject(
              done.get(i).id(),
              Scope.OPERATION,
              caseFile,
              List.of(done.get(i)),
              done.subList(0, i)));
    }
    for (Plan plan : caseFile.plans()) {
      List<Operation> before = new ArrayList<>(done);
      List<Operation> stages = plan.stages().stream().map(Operation::asPlanned).toList();
      for (Operation stage : stages) {
        subjects.add(
            new Subject(
                plan.id() + "/" + stage.id(), Scope.STAGE, caseFile, List.of(stage), before));
        before.add(stage);
      }
      if (!plan.stages().isEmpty()) {
        subjects.add(new Subject(plan.id(), Scope.PLAN, caseFile, stages, done));
      }
    }
    return List.copyOf(subjects);
  }

  /**
   * Return the moment after the last operation, with all that was found since: a step that does
   * nothing. It is nothing to judge.
   */
  public static Subject now(CaseFile caseFile) {
    return new Subject(
        "now", Scope.STAGE, caseFile, List.of(nothing(Optional.empty())), caseFile.operations());
  }

  /** Return the moment before it begins, with all that was known then. It is nothing to judge. */
  public Subject justBefore() {
    return new Subject(
        "before " + id,
        scope == Scope.OPERATION ? scope : Scope.STAGE,
        caseFile,
        List.of(nothing(steps.get(0).day())),
        before);
  }

  /**
   * Return the operation whose failure led to this one, as it was judged: the last one done before
   * it that was meant to unite the bone. A stage that did what it was for is passed over.
   */
  public Optional<Subject> failedBefore() {
    int done = Math.min(before.size(), caseFile.operations().size());
    for (int i = done - 1; i >= 0; i--) {
      Operation earlier = before.get(i);
      if (!earlier.wasOnlyAStage()) {
        return Optional.of(
            new Subject(
                earlier.id(), Scope.OPERATION, caseFile, List.of(earlier), before.subList(0, i)));
      }
    }
    return Optional.empty();
  }

  private static Operation nothing(Optional<Quantity> day) {
    return Operation.named("nothing-yet", day).asPlanned();
  }

  /** Return whether it is still to be done. */
  public boolean planned() {
    return scope != Scope.OPERATION;
  }

  /** Return the plan that it is, or belongs to. */
  public Optional<Plan> plan() {
    String of = id.contains("/") ? id.substring(0, id.indexOf('/')) : id;
    return planned()
        ? caseFile.plans().stream().filter(plan -> plan.id().equals(of)).findFirst()
        : Optional.empty();
  }

  /** Return whether the case ends with it: a plan, or the last operation where there is no plan. */
  public boolean closesTheCase() {
    boolean anyPlan = caseFile.plans().stream().anyMatch(plan -> !plan.stages().isEmpty());
    boolean lastDone = before.size() == caseFile.operations().size() - 1;
    return scope == Scope.PLAN || (scope == Scope.OPERATION && !anyPlan && lastDone);
  }

  /** Return the last step: the operation itself, or a plan's last stage. */
  public Operation operation() {
    return steps.get(steps.size() - 1);
  }

  /** Return the path of a step in words that name its place in the file. */
  public String path(Operation step) {
    if (scope == Scope.PLAN) {
      return id + "/" + step.id();
    }
    return id;
  }

  /** Return the operations up to and including this subject, in order. */
  public List<Operation> upToHere() {
    List<Operation> all = new ArrayList<>(before);
    all.addAll(steps);
    return all;
  }

  /** Return whether an earlier operation put in a fixation, as far as the file tells. */
  public boolean isRevision() {
    return before.stream()
        .anyMatch(operation -> operation.fixation().map(f -> !f.isEmpty()).orElse(true));
  }

  /**
   * Return whether something seen on a day was known when it began. Of an operation without a day
   * it is only certain that it came after those before it, so what was seen later counts as not
   * known.
   */
  public boolean knows(Quantity day) {
    return planned() || day.middle() <= lastCertainDay();
  }

  /**
   * Return whether the state of a piece of metal put in earlier was known when it began. A state
   * without a day counts as known, and so does one with a day where the operation itself has none:
   * to tell the day of a state must not make it less known.
   */
  public boolean knowsState(Optional<Quantity> seen) {
    boolean undated = !planned() && operation().day().isEmpty();
    return undated || seen.map(this::knows).orElse(true);
  }

  private double lastCertainDay() {
    return operation()
        .day()
        .map(Quantity::middle)
        .orElseGet(
            () ->
                before.stream()
                    .flatMap(earlier -> earlier.day().stream())
                    .mapToDouble(Quantity::middle)
                    .max()
                    .orElse(0));
  }

  /** Return the findings that were known when it began, the latest first. */
  public List<Finding> findings() {
    return caseFile.findings().stream()
        .filter(finding -> knows(finding.day()))
        .sorted(Comparator.comparingDouble((Finding f) -> f.day().middle()).reversed())
        .toList();
  }

  /** Return the latest answer to one question among the findings known when it began. */
  public <T> Optional<T> latest(Function<Finding, Optional<T>> question) {
    return findings().stream().flatMap(finding -> question.apply(finding).stream()).findFirst();
  }
}
