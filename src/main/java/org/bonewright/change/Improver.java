package org.bonewright.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Plan;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.shelf.Shelf;

/**
 * Looks for a plan that leaves nothing critical or major unmet, by single moves of the cards from
 * the plan as drawn. Only the plan is changed: no fact, no operation of the past. What is unknown
 * stays unknown, and is told with its question.
 */
public final class Improver {

  /** So many plans are usually judged at the most; about a minute's work. */
  public static final int USUAL_MOST = 150;

  /** More than so many are asked for by mistake; about half an hour's work. */
  public static final int HIGHEST_MOST = 5000;

  private final RuleSet rules;
  private final Shelf shelf;
  private final int most;
  private final IntConsumer progress;

  /**
   * Make an improver.
   *
   * @param shelf where new implants come from
   * @param most so many plans are judged at the most, the drawn one among them; 1 or more
   * @param progress is told how many plans were judged so far
   */
  public Improver(RuleSet rules, Shelf shelf, int most, IntConsumer progress) {
    this.rules = rules;
    this.shelf = shelf;
    this.most = most;
    this.progress = progress;
  }

  /** Return the ids of the plans of a case that have a stage. */
  public static List<String> plans(CaseFile caseFile) {
    return caseFile.plans().stream()
        .filter(plan -> !plan.stages().isEmpty())
        .map(Plan::id)
        .toList();
  }

  /** Return the id of the plan that is meant where none is named: the chosen, or the only one. */
  public static Optional<String> usualPlan(CaseFile caseFile) {
    List<String> all = plans(caseFile);
    return caseFile.plans().stream()
        .filter(plan -> plan.chosen().orElse(false))
        .map(Plan::id)
        .filter(all::contains)
        .findFirst()
        .or(() -> all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty());
  }

  /**
   * Walk from a plan.
   *
   * @param file the case file as it was read without error
   * @param plan id of the plan
   * @return nothing where the case has no such plan, or the plan has no stage
   */
  public Optional<Improvement> improve(byte[] file, String plan) {
    PlanJudge judge = new PlanJudge(rules);
    return PlanInFile.of(file, plan)
        .map(PlanInFile::alone)
        .flatMap(drawn -> judge.judged(drawn).map(judged -> walk(drawn, judged, judge)));
  }

  private Improvement walk(PlanInFile drawn, JudgedPlan judged, PlanJudge judge) {
    OpenPlaces places = new OpenPlaces(judged);
    Search search = new Search(rules, new Options(shelf), judge, places, most, progress);
    Node start = search.start(drawn, judged);
    Node end = search.isInfectionFirst(start) ? start : search.down(start);
    boolean found = end.open().isEnough();
    BeforePlan.Infection infection = infection(drawn);
    List<Improvement.Stays> stays = new Reasons(rules, search, judge, infection).of(end, places);
    Optional<Improvement.Shortness> shortness = Optional.empty();
    if (found && !end.path().isEmpty()) {
      Node greedy = end;
      Optional<Node> shorter = search.shorter(start, greedy.path().size());
      end = shorter.orElse(greedy);
      shortness =
          Optional.of(
              search.wasCut()
                  ? Improvement.Shortness.SHORTER_MAY_EXIST
                  : Improvement.Shortness.NONE_SHORTER);
    }
    return new Improvement(
        drawn.root().path("reference").asString(""),
        drawn.root().path("provenance").asString("").equals("invented"),
        drawn.planId(),
        outcome(start, found, search),
        about(infection, end, search.leavesInfectionOpen(end)),
        shortness,
        steps(end, judge),
        start.price(),
        end.price(),
        stays,
        milder(end.judged(), judge),
        ToFind.out(end.judged(), judge),
        judge.judgings(),
        most,
        shelf.name(),
        OffShelf.of(end.file(), new Setting(end.file().root(), shelf)),
        end.file().plan());
  }

  private static BeforePlan.Infection infection(PlanInFile drawn) {
    return BeforePlan.of(drawn.root())
        .map(BeforePlan::infection)
        .orElse(BeforePlan.Infection.NO_SIGN);
  }

  private static Improvement.Infection about(
      BeforePlan.Infection infection, Node end, boolean leftOpen) {
    if (end.path().stream().anyMatch(step -> step.option().move().equals(InfectionStages.MOVE))) {
      return Improvement.Infection.DRAWN_IN_STAGES;
    }
    return leftOpen && infection != BeforePlan.Infection.NO_SIGN
        ? Improvement.Infection.COMES_FIRST
        : Improvement.Infection.NOT_AT_ISSUE;
  }

  private static Improvement.Outcome outcome(Node start, boolean found, Search search) {
    if (start.open().isEnough()) {
      return Improvement.Outcome.NOTHING_NEEDED;
    }
    if (search.isInfectionFirst(start)) {
      return Improvement.Outcome.INFECTION_FIRST;
    }
    return found ? Improvement.Outcome.FOUND : Improvement.Outcome.NONE;
  }

  private static List<Improvement.Step> steps(Node end, PlanJudge judge) {
    Differences differences = new Differences(judge::title);
    List<Improvement.Step> steps = new ArrayList<>();
    for (Node.Taken taken : end.path()) {
      steps.add(
          new Improvement.Step(
              taken.option().stage(),
              taken.option().move(),
              taken.option().words(),
              taken.forPlace().principle(),
              judge.title(taken.forPlace()),
              differences.better(taken.before(), taken.after()),
              differences.worse(taken.before(), taken.after())));
    }
    return steps;
  }

  private static List<String> milder(JudgedPlan judged, PlanJudge judge) {
    return judged.found().entrySet().stream()
        .filter(entry -> entry.getValue().standing().verdict() == VerdictKind.UNMET)
        .filter(entry -> entry.getValue().standing().grave().compareTo(Severity.MAJOR) < 0)
        .map(Map.Entry::getKey)
        .map(judge::title)
        .distinct()
        .toList();
  }
}
