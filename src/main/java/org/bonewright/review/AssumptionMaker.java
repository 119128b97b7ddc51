package org.bonewright.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.VerdictKind;

/**
 * Gathers what was assumed in verdicts that apply, each once, with the subjects it served. What a
 * model samples is left out: its share stands beside each verdict.
 */
final class AssumptionMaker {

  private AssumptionMaker() {}

  static List<Assumption> assumptions(JudgedCase judged, RuleSet rules) {
    Map<String, Set<String>> bySubject = new LinkedHashMap<>();
    judged.judgements().values().stream()
        .flatMap(List::stream)
        .filter(j -> !j.is(VerdictKind.NOT_APPLICABLE))
        .forEach(j -> collect(j, rules, bySubject));
    List<Assumption> assumptions = new ArrayList<>();
    bySubject.forEach(
        (what, subjects) -> assumptions.add(new Assumption(what, List.copyOf(subjects))));
    return List.copyOf(assumptions);
  }

  private static void collect(
      Judgement judgement, RuleSet rules, Map<String, Set<String>> bySubject) {
    judgement
        .readings()
        .forEach(
            (need, reading) -> {
              if (assumed(reading)) {
                String measure = judgement.card().needs().getOrDefault(need, need);
                bySubject
                    .computeIfAbsent(
                        what(rules.definition(measure), reading), w -> new LinkedHashSet<>())
                    .add(judgement.subject());
              }
            });
  }

  private static boolean assumed(Reading reading) {
    return (reading instanceof Reading.Amount amount && amount.kind() == Kind.ASSUMED)
        || (reading instanceof Reading.Word word && word.kind() == Kind.ASSUMED);
  }

  private static String what(Definition definition, Reading reading) {
    return definition.title()
        + " "
        + reading.shown(definition.shownUnit())
        + ": "
        + reading.working();
  }
}
