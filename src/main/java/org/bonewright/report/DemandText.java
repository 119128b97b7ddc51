package org.bonewright.report;

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
    demands.demands().forEach(this::demand);
    titles("  yes   ", demands, VerdictKind.MET);
    titles("  n/a   ", demands, VerdictKind.NOT_APPLICABLE);
  }

  /** What is answered well takes a line, not a paragraph each; the arithmetic is for verbose. */
  private void titles(String mark, PlanDemands demands, VerdictKind kind) {
    List<String> titles =
        demands.demands().stream()
            .filter(d -> d.answer().verdict() == kind)
            .filter(d -> !verbose || kind != VerdictKind.MET)
            .map(d -> d.answer().title())
            .toList();
    if (!titles.isEmpty()) {
      page.hanging(mark, String.join("; ", titles));
    }
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
