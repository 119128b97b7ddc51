package org.bonewright.principles;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Subject;

/**
 * Judges one case again and again, each time with other plans: what was done is judged once. It
 * says what a {@link Judge} says. Not safe for use by several threads.
 */
public final class PlansJudge {

  private final Judge judge;
  private final Map<CaseFile, Map<String, List<Judgement>>> done = new LinkedHashMap<>();

  /** Make a judge with these rules. */
  public PlansJudge(RuleSet rules) {
    this.judge = new Judge(rules);
  }

  /** Judge a case. */
  public JudgedCase judge(CaseFile caseFile) {
    CaseFile past = caseFile.withoutPlans();
    boolean planned = caseFile.plans().stream().anyMatch(plan -> !plan.stages().isEmpty());
    Map<String, List<Judgement>> known =
        planned ? done.getOrDefault(past, Map.of()) : Map.of(); // else the last operation closes it
    Judge.Raw raw = judge.raw(caseFile, known);
    if (planned && known.isEmpty()) {
      Map<String, List<Judgement>> kept = new LinkedHashMap<>();
      raw.subjects().stream()
          .filter(subject -> subject.scope() == Subject.Scope.OPERATION)
          .map(Subject::id)
          .forEach(id -> kept.put(id, List.copyOf(raw.bySubject().getOrDefault(id, List.of()))));
      done.put(past, kept);
    }
    return judge.whole(caseFile, raw);
  }
}
