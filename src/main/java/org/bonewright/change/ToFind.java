package org.bonewright.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Gathers what stays unknown by the question that would settle it. */
final class ToFind {

  private ToFind() {}

  private record Waiting(String title, Severity worst) {}

  /**
   * Return what is unknown and may be critical or major: the gravest, then the most asked first.
   */
  static List<Improvement.ToFindOut> out(JudgedPlan judged, PlanJudge judge) {
    Map<String, List<Waiting>> byQuestion = new LinkedHashMap<>();
    Map<String, Boolean> answerable = new LinkedHashMap<>();
    judged
        .found()
        .forEach(
            (place, found) -> {
              if (mayBeGrave(found.standing())) {
                boolean asked = !found.asks().isEmpty();
                String question = asked ? found.asks().get(0) : model(found.words());
                answerable.put(question, asked);
                byQuestion
                    .computeIfAbsent(question, q -> new ArrayList<>())
                    .add(new Waiting(judge.title(place), found.standing().grave()));
              }
            });
    return byQuestion.entrySet().stream()
        .map(
            entry ->
                new Improvement.ToFindOut(
                    entry.getKey(),
                    worst(entry.getValue()),
                    entry.getValue().stream()
                        .sorted(Comparator.comparing(Waiting::worst).reversed())
                        .map(Waiting::title)
                        .distinct()
                        .toList(),
                    answerable.getOrDefault(entry.getKey(), true)))
        .sorted(
            Comparator.comparing(Improvement.ToFindOut::worst)
                .reversed()
                .thenComparing(find -> -find.titles().size()))
        .toList();
  }

  /** Return what a model's samples say, without the words before it. */
  private static String model(String words) {
    return words.replaceFirst("^Cannot be judged: ", "");
  }

  private static Severity worst(List<Waiting> waiting) {
    return waiting.stream()
        .map(Waiting::worst)
        .max(Comparator.naturalOrder())
        .orElse(Severity.NOTE);
  }

  private static boolean mayBeGrave(PlanChange.Standing standing) {
    return standing.verdict() == VerdictKind.UNKNOWN
        && standing.grave().compareTo(Severity.MAJOR) >= 0;
  }
}
