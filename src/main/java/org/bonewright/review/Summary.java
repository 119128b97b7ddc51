package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Says the upshot in one or two sentences. */
final class Summary {

  private static final int NAMED = 2;

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
    List<String> parts = new ArrayList<>();
    String unmet = named(all, VerdictKind.UNMET);
    String open = named(all, VerdictKind.UNKNOWN);
    parts.add(unmet.isEmpty() ? "nothing unmet" : "unmet " + unmet);
    if (!open.isEmpty()) {
      parts.add("open " + open);
    }
    parts.add("met " + all.stream().filter(j -> j.is(VerdictKind.MET)).count());
    return id + ": " + String.join("; ", parts) + ".";
  }

  /** The gravest by name, the rest by number. */
  private static String named(List<Judgement> all, VerdictKind kind) {
    List<Judgement> mine =
        all.stream()
            .filter(j -> j.is(kind))
            .filter(j -> j.severity().isPresent())
            .sorted(
                Comparator.comparing((Judgement j) -> j.severity().orElse(Severity.NOTE))
                    .reversed())
            .toList();
    String names =
        String.join(
            ", ",
            mine.stream()
                .limit(NAMED)
                .map(j -> j.card().title() + " (" + j.severity().orElse(Severity.NOTE).word() + ")")
                .toList());
    return mine.size() > NAMED ? names + " and " + (mine.size() - NAMED) + " more" : names;
  }
}
