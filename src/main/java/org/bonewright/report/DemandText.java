package org.bonewright.report;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Line;
import org.bonewright.review.PlanDemands;

/** What a plan must achieve and whether it does, as text. */
final class DemandText {

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
      titles("  n/a   ", of(demands, VerdictKind.NOT_APPLICABLE));
      tensions(demands);
      return;
    }
    List<PlanDemands.Demand> unmet = of(demands, VerdictKind.UNMET);
    unmet.stream().filter(DemandText::isGrave).forEach(this::demand);
    List<Line> mild =
        unmet.stream().filter(d -> !isGrave(d)).map(PlanDemands.Demand::answer).toList();
    if (!mild.isEmpty()) {
      page.hanging("  no    ", TitlesBySeverity.of(mild));
    }
    open(of(demands, VerdictKind.UNKNOWN));
    List<PlanDemands.Demand> met = of(demands, VerdictKind.MET);
    List<PlanDemands.Demand> learnt = met.stream().filter(d -> !d.taughtBy().isEmpty()).toList();
    titles("  yes   ", learnt, met.size() - learnt.size());
    titles("  n/a   ", of(demands, VerdictKind.NOT_APPLICABLE));
    tensions(demands);
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
    List<Line> grave =
        open.stream().filter(DemandText::isGrave).map(PlanDemands.Demand::answer).toList();
    int mild = open.size() - grave.size();
    List<String> parts = new ArrayList<>();
    if (!grave.isEmpty()) {
      parts.add("at worst " + TitlesBySeverity.of(grave) + " (see what to find out first)");
    }
    if (mild > 0) {
      parts.add(mild + " more, minor at worst");
    }
    if (!parts.isEmpty()) {
      page.hanging("  ?     ", String.join("; ", parts) + ".");
    }
  }

  /** What is answered well takes a line, not a paragraph each; the arithmetic is for verbose. */
  private void titles(String mark, List<PlanDemands.Demand> demands, int more) {
    List<String> titles =
        new ArrayList<>(demands.stream().map(d -> d.answer().title()).distinct().toList());
    if (more > 0) {
      titles.add((titles.isEmpty() ? "" : "and ") + more + " that no operation left unmet");
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
                  + (verbose ? ". " + answer.words() : " (see what to find out first)."));
      case MET -> {
        if (!verbose) {
          return;
        }
        page.hanging("  yes   ", answer.title() + taught + ". " + answer.words());
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
