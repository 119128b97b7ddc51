package org.bonewright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.principles.FailureTable;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;

/**
 * Orders what an operation left unmet by how well it explains how and when it failed: first by its
 * place in the row of the failure mode, then by whether its cause fits the time, by severity, by
 * how far it falls short, and by id. There is no score; each finding says which of these placed it.
 * Findings with one cause share a headline.
 */
final class FailureReasons {

  private final FailureTable table;
  private final LineMaker lines;
  private final boolean unexplained;
  private final Optional<FailureMode> mode;
  private final Optional<Dimension> weeks;
  private final List<Headline> fits = new ArrayList<>();
  private final List<Headline> others = new ArrayList<>();

  /** What places a finding. */
  private enum Key {
    ROW("failure mode"),
    TIME("time of failure"),
    SEVERITY("severity"),
    SHORTFALL("shortfall"),
    ID("name");

    private final String word;

    Key(String word) {
      this.word = word;
    }
  }

  FailureReasons(Scene scene, List<Judgement> unmet, FailureTable table, LineMaker lines) {
    this.table = table;
    this.lines = lines;
    boolean failed = scene.certainly("operation-failed", "yes");
    this.mode = failed ? scene.operation().outcome().flatMap(Outcome::mode) : Optional.empty();
    this.weeks = failed ? weeks(scene) : Optional.empty();
    List<Judgement> ordered = unmet.stream().sorted(order()).toList();
    Map<String, List<Judgement>> byCause = new LinkedHashMap<>();
    ordered.forEach(
        j -> byCause.computeIfAbsent(j.card().cause(), cause -> new ArrayList<>()).add(j));
    List<List<Judgement>> groups = List.copyOf(byCause.values());
    split(groups.stream().filter(group -> inRow(group.get(0))).toList(), fits);
    split(groups.stream().filter(group -> !inRow(group.get(0))).toList(), others);
    this.unexplained =
        failed
            && mode.filter(FailureMode.INFECTION::equals).isEmpty()
            && fits.isEmpty()
            && unmet.stream().noneMatch(this::isTechnicalReason);
  }

  /** Return the findings of which one fits how it failed, best first. */
  List<Headline> fits() {
    return List.copyOf(fits);
  }

  /** Return the findings that are present and do not explain it. */
  List<Headline> others() {
    return List.copyOf(others);
  }

  /**
   * Return whether it failed, not by infection, nothing fits how it failed, and no technical
   * principle is certainly unmet at major or more.
   */
  boolean unexplained() {
    return unexplained;
  }

  private boolean isTechnicalReason(Judgement finding) {
    return table.isTechnical(finding.card().cause())
        && severity(finding).compareTo(Severity.MAJOR) >= 0;
  }

  private static Optional<Dimension> weeks(Scene scene) {
    return scene.read("weeks-to-failure") instanceof Reading.Amount weeks
        ? Optional.of(new Dimension(weeks.min(), weeks.max(), false, ""))
        : Optional.empty();
  }

  private void split(List<List<Judgement>> groups, List<Headline> into) {
    for (int i = 0; i < groups.size(); i++) {
      Judgement first = groups.get(i).get(0);
      Optional<Judgement> beside =
          i > 0
              ? Optional.of(groups.get(i - 1).get(0))
              : groups.size() > 1 ? Optional.of(groups.get(1).get(0)) : Optional.empty();
      into.add(headline(groups.get(i), placedBy(first, beside)));
    }
  }

  /** Name the first key in which a finding differs from the one beside it. */
  private String placedBy(Judgement finding, Optional<Judgement> beside) {
    for (Key key : Key.values()) {
      if (beside.isPresent() && by(key).compare(finding, beside.get()) != 0) {
        return key.word;
      }
    }
    return (inRow(finding) ? Key.ROW : Key.SEVERITY).word;
  }

  private Comparator<Judgement> order() {
    return Arrays.stream(Key.values())
        .map(this::by)
        .reduce(Comparator::thenComparing)
        .orElseThrow();
  }

  private Comparator<Judgement> by(Key key) {
    return switch (key) {
      case ROW -> Comparator.comparingInt(this::place);
      case TIME -> Comparator.comparing(j -> !fitsTime(j));
      case SEVERITY -> Comparator.comparing(FailureReasons::severity).reversed();
      case SHORTFALL -> Comparator.comparingDouble(Shortfall::of).reversed();
      case ID -> Comparator.comparing(j -> j.card().id());
    };
  }

  private int place(Judgement finding) {
    return mode.map(m -> table.place(m, finding.card().id()).orElse(Integer.MAX_VALUE))
        .orElse(Integer.MAX_VALUE);
  }

  private boolean inRow(Judgement finding) {
    return place(finding) < Integer.MAX_VALUE;
  }

  private boolean fitsTime(Judgement finding) {
    return weeks.map(w -> table.fitsTime(finding.card().cause(), w)).orElse(false);
  }

  private static Severity severity(Judgement finding) {
    return finding.severity().orElse(Severity.NOTE);
  }

  /**
   * A headline is as grave as the gravest that it covers; of equals the one that fits best leads.
   */
  private Headline headline(List<Judgement> found, String placedBy) {
    List<Line> ordered =
        found.stream()
            .sorted(Comparator.comparing(FailureReasons::severity).reversed())
            .map(lines::line)
            .toList();
    return new Headline(
        found.get(0).card().cause(), ordered.get(0), ordered.subList(1, ordered.size()), placedBy);
  }
}
