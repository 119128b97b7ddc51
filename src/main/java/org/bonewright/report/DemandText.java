package org.bonewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Line;
import org.bonewright.review.PlanDemands;

/** What a plan must achieve and whether it does, as text. */
final class DemandText {

  private static final int MOST_IN_FULL = 2;
  private static final int MOST_CRITICAL = 4;
  private static final int MOST_LEARNT = 2;
  private static final int MOST_OPEN = 3;

  private final Page page;
  private final boolean verbose;

  DemandText(Page page, boolean verbose) {
    this.page = page;
    this.verbose = verbose;
  }

  void demands(PlanDemands demands) {
    if (demands.demands().isEmpty()) {
      page.line("  The history left nothing unmet.");
    }
    if (verbose) {
      demands.demands().forEach(this::demand);
      titles("  does not apply: ", of(demands, VerdictKind.NOT_APPLICABLE));
      tensions(demands);
      return;
    }
    List<PlanDemands.Demand> unmet = of(demands, VerdictKind.UNMET);
    List<PlanDemands.Demand> inFull =
        unmet.stream().filter(DemandText::isGrave).limit(inFull(unmet)).toList();
    inFull.forEach(this::demand);
    List<Line> rest = unmet.stream().skip(inFull.size()).map(PlanDemands.Demand::answer).toList();
    if (!rest.isEmpty()) {
      page.hanging("  no    ", TitlesBySeverity.of(rest));
    }
    open(of(demands, VerdictKind.UNKNOWN));
    List<PlanDemands.Demand> met =
        of(demands, VerdictKind.MET).stream().filter(d -> d.answer().labels().isEmpty()).toList();
    List<PlanDemands.Demand> learnt =
        met.stream().filter(d -> !d.taughtBy().isEmpty()).limit(MOST_LEARNT).toList();
    titles("  yes   ", learnt, met.size() - learnt.size());
    labelled(of(demands, VerdictKind.MET));
    tensions(demands);
  }

  /** Everything critical in full, up to a few; of the rest the gravest. */
  private static long inFull(List<PlanDemands.Demand> unmet) {
    long critical =
        unmet.stream()
            .filter(d -> d.answer().severity().equals(Optional.of(Severity.CRITICAL)))
            .limit(MOST_CRITICAL)
            .count();
    return Math.max(MOST_IN_FULL, critical);
  }

  /** What is in order but not now, such as mechanics that an infection puts off, is no praise. */
  private void labelled(List<PlanDemands.Demand> met) {
    Map<String, Integer> byLabel = new TreeMap<>();
    met.forEach(
        demand -> demand.answer().labels().forEach(label -> byLabel.merge(label, 1, Integer::sum)));
    byLabel.forEach(
        (label, number) ->
            page.hanging(
                "  but   ",
                label
                    + "; in order otherwise: "
                    + number
                    + (number == 1 ? " principle" : " principles")
                    + " of compression and graft."));
  }

  /** Of a plan that was not chosen, the numbers. */
  void inOneLine(PlanDemands demands) {
    List<Line> unmet =
        of(demands, VerdictKind.UNMET).stream()
            .filter(DemandText::isGrave)
            .map(PlanDemands.Demand::answer)
            .toList();
    page.hanging(
        demands.plan() + " (not chosen): ",
        (unmet.isEmpty() ? "no grave fault" : TitlesBySeverity.of(unmet))
            + "; "
            + of(demands, VerdictKind.UNKNOWN).size()
            + " open; more with --verbose.");
  }

  private void tensions(PlanDemands demands) {
    demands.tensions().forEach(tension -> page.hanging("  weigh ", tension));
  }

  private static List<PlanDemands.Demand> of(PlanDemands demands, VerdictKind kind) {
    return demands.demands().stream().filter(d -> d.answer().verdict() == kind).toList();
  }

  private static boolean isGrave(PlanDemands.Demand demand) {
    return demand.answer().severity().orElse(Severity.NOTE).compareTo(Severity.MAJOR) >= 0;
  }

  private void open(List<PlanDemands.Demand> open) {
    if (!open.isEmpty()) {
      String worst =
          TitlesBySeverity.atWorst(
              open.stream().map(PlanDemands.Demand::answer).toList(), MOST_OPEN);
      page.hanging("  ?     ", worst + ".");
    }
  }

  /** What is answered well takes a line, not a paragraph each; the arithmetic is for verbose. */
  private void titles(String mark, List<PlanDemands.Demand> demands, int more) {
    List<String> titles =
        new ArrayList<>(demands.stream().map(d -> LocalText.title(d.answer())).distinct().toList());
    if (more > 0) {
      titles.add(titles.isEmpty() ? more + " principles" : "and " + more + " more");
    }
    if (!titles.isEmpty()) {
      page.hanging(mark, String.join("; ", titles));
    }
  }

  private void titles(String mark, List<PlanDemands.Demand> demands) {
    titles(mark, demands, 0);
  }

  private void demand(PlanDemands.Demand demand) {
    Line answer = demand.answer();
    String taught =
        demand.taughtBy().isEmpty()
            ? ""
            : " (unmet at " + String.join(", ", demand.taughtBy()) + ")";
    switch (answer.verdict()) {
      case UNMET ->
          page.hanging(
              "  NO    ",
              StoryText.severity(answer)
                  + answer.title()
                  + taught
                  + ". "
                  + answer.words()
                  + StoryText.remarks(answer)
                  + " Would clear it: "
                  + answer.remedy());
      case UNKNOWN ->
          page.hanging(
              "  ?     ",
              "at worst "
                  + answer.severity().map(Severity::word).orElse("a note")
                  + ": "
                  + answer.title()
                  + taught
                  + (verbose ? ". " + answer.words() : " (see what to find out first).")
                  + StoryText.beside(answer));
      case MET -> {
        if (!verbose) {
          return;
        }
        page.hanging(
            "  yes   ", answer.title() + taught + ". " + answer.words() + StoryText.beside(answer));
      }
      case NOT_APPLICABLE -> {
        return;
      }
    }
    if (verbose) {
      answer.workings().forEach(working -> page.hanging("        - ", working));
      answer.turns().forEach(turn -> page.hanging("        > ", turn));
    }
  }
}
