package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.casefile.Plan;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Says the upshot in one or two sentences. */
final class Summary {

  private Summary() {}

  static String of(JudgedCase judged, List<Plan> plans) {
    int operations = judged.caseFile().operations().size();
    String history =
        operations == 0
            ? "No operation yet. "
            : operations == 1 ? "One operation. " : operations + " operations. ";
    if (plans.isEmpty()) {
      return history + "No plan is on file.";
    }
    return history
        + String.join(
            " ", plans.stream().map(p -> plan(p.id(), new PlanVerdicts(judged, p))).toList());
  }

  private static String plan(String id, PlanVerdicts verdicts) {
    List<Judgement> all = verdicts.all();
    String unmet = counted(all, VerdictKind.UNMET);
    String unknown = counted(all, VerdictKind.UNKNOWN);
    long met = all.stream().filter(j -> j.is(VerdictKind.MET)).count();
    List<String> parts = new ArrayList<>();
    parts.add((unmet.isEmpty() ? "none" : unmet) + " unmet");
    if (!unknown.isEmpty()) {
      parts.add(unknown + " open");
    }
    parts.add(met + " met");
    return "In " + id + " " + String.join(", ", parts) + ".";
  }

  private static String counted(List<Judgement> all, VerdictKind kind) {
    Map<Severity, Long> bySeverity = new TreeMap<>(Comparator.reverseOrder());
    all.stream()
        .filter(j -> j.is(kind))
        .map(Judgement::severity)
        .flatMap(Optional::stream)
        .forEach(severity -> bySeverity.merge(severity, 1L, Long::sum));
    long sum = bySeverity.values().stream().mapToLong(Long::longValue).sum();
    List<String> parts = new ArrayList<>();
    bySeverity.forEach((severity, n) -> parts.add(n + " " + severity.word()));
    return sum == 0 ? "" : sum + " (" + String.join(", ", parts) + ")";
  }
}
