package org.bonewright.change;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.PlansJudge;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.bonewright.principles.Wording;

/**
 * Reads a drawn plan as any file is read, checks it and judges it in full. What was judged before
 * is not judged again.
 */
final class PlanJudge {

  private static final Set<String> FOUND_BY_STAGE = Set.of("/compression/gapBeforeMm");

  private final RuleSet rules;
  private final PlansJudge judge;
  private final Wording wording;
  private final Map<String, Optional<JudgedPlan>> before = new HashMap<>();
  private int judgings;

  PlanJudge(RuleSet rules) {
    this.rules = rules;
    this.judge = new PlansJudge(rules);
    this.wording = new Wording(rules);
  }

  /** Return the verdicts; nothing where the file does not fit together. */
  Optional<JudgedPlan> judged(PlanInFile file) {
    return before.computeIfAbsent(file.text(), text -> now(file));
  }

  /** Return whether a file was read before, so that to judge it costs nothing. */
  boolean knows(PlanInFile file) {
    return before.containsKey(file.text());
  }

  /** Return how many files were judged, each counted once. */
  int judgings() {
    return judgings;
  }

  /** Return the title of a principle. */
  String title(Place place) {
    return rules.card(place.principle()).map(Card::title).orElse(place.principle());
  }

  private Optional<JudgedPlan> now(PlanInFile file) {
    return new Intake()
        .read(file.bytes())
        .caseFile()
        .map(
            caseFile -> {
              judgings++;
              return judgedPlan(judge.judge(caseFile));
            });
  }

  private JudgedPlan judgedPlan(JudgedCase judged) {
    Set<String> planned = planned(judged.caseFile());
    Map<Place, JudgedPlan.Found> found = new LinkedHashMap<>();
    for (Subject subject : judged.subjects()) {
      if (subject.planned()) {
        for (Judgement judgement : judged.of(subject)) {
          found.put(new Place(judgement.card().id(), subject.id()), found(judgement, planned));
        }
      }
    }
    return new JudgedPlan(found);
  }

  /** Return the ids of plans and stages: with one of them begins the place of what is planned. */
  private static Set<String> planned(CaseFile caseFile) {
    return caseFile.plans().stream()
        .flatMap(
            plan ->
                Stream.concat(
                    Stream.of(plan.id()), plan.stages().stream().map(stage -> stage.id())))
        .collect(Collectors.toUnmodifiableSet());
  }

  private JudgedPlan.Found found(Judgement judgement, Set<String> planned) {
    VerdictKind kind = judgement.verdict().kind();
    boolean open = kind == VerdictKind.UNMET || kind == VerdictKind.UNKNOWN;
    List<MissingFact> missing =
        judgement.verdict() instanceof Verdict.Unknown unknown ? missing(unknown) : List.of();
    return new JudgedPlan.Found(
        new PlanChange.Standing(kind, judgement.severity().orElse(Severity.NOTE)),
        open ? wording.of(judgement) : "",
        missing.stream().map(MissingFact::question).distinct().toList(),
        !missing.isEmpty() && missing.stream().noneMatch(fact -> isOfPlan(fact.field(), planned)));
  }

  /** What a stage finds stands in its part of the file, and is a fact all the same. */
  private static boolean isOfPlan(String field, Set<String> planned) {
    return planned.contains(first(field)) && FOUND_BY_STAGE.stream().noneMatch(field::endsWith);
  }

  private static String first(String field) {
    return field.replaceFirst("/.*", "");
  }

  private static List<MissingFact> missing(Verdict.Unknown unknown) {
    return Stream.concat(unknown.settles().stream(), unknown.asks().stream()).toList();
  }
}
