package org.bonewright.principles;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the rules of precedence put what they decide; the global {@code decisions} of their files.
 * They add labels and steps of severity; they never change a verdict.
 */
public final class Decisions {

  /** The kinds of severity step, in the order in which they are taken. */
  public enum Step {
    /** What the site has set. */
    SITE,
    /** What holds for this bone. */
    BONE,
    /** The fracture united: outcome beats rule. */
    OUTCOME,
    /** The literature disagrees. */
    DISPUTE,
    /** Unmet at the operation before as well. */
    REPEAT
  }

  private final Map<Judged, Set<String>> labels = new HashMap<>();
  private final Map<Judged, Map<Step, Severity>> caps = new HashMap<>();
  private final Set<Judged> raised = new HashSet<>();

  /** Put a label on a verdict. */
  public void label(Judged judged, String label) {
    labels.computeIfAbsent(judged, j -> new HashSet<>()).add(label);
  }

  /** Let a verdict count as this severity at most, for this reason. */
  public void cap(Judged judged, String step, String severity) {
    caps.computeIfAbsent(judged, j -> new HashMap<>())
        .merge(
            Step.valueOf(step.toUpperCase(java.util.Locale.ROOT)),
            Severity.of(severity),
            Severity::atMost);
  }

  /** Raise the severity of a verdict by one step, since it was unmet before as well. */
  public void raise(Judged judged) {
    raised.add(judged);
  }

  /** Return the labels of a verdict, sorted. */
  List<String> labels(Judged judged) {
    return labels.getOrDefault(judged, Set.of()).stream().sorted().toList();
  }

  /**
   * Return the steps that a severity takes, in order: caps first, then the raise, which never goes
   * past a cap, nor past the gravest that the principle can be.
   */
  List<SeverityStep> steps(Judged judged, Severity base, Severity highest) {
    List<SeverityStep> steps = new java.util.ArrayList<>();
    Map<Step, Severity> mine = caps.getOrDefault(judged, Map.of());
    Severity now = base;
    for (Step step : mine.keySet().stream().sorted().toList()) {
      Severity capped = now.atMost(mine.getOrDefault(step, Severity.CRITICAL));
      if (capped != now) {
        steps.add(new SeverityStep(step, now, capped));
        now = capped;
      }
    }
    if (raised.contains(judged)) {
      Severity ceiling =
          mine.values().stream().min(Comparator.naturalOrder()).orElse(Severity.CRITICAL);
      Severity up = now.raised().atMost(ceiling).atMost(highest);
      if (up.compareTo(now) > 0) {
        steps.add(new SeverityStep(Step.REPEAT, now, up));
      }
    }
    return List.copyOf(steps);
  }
}
