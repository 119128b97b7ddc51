package org.bonewright.report;

import java.util.List;
import org.bonewright.change.PlanChange;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Explanation;

/** Changes to a plan, as text. */
public final class ChangeText {

  private static final String INDENT = "  ";

  private ChangeText() {}

  /**
   * Return what was found, or that nothing was.
   *
   * @param explained the verdicts that were to be turned
   * @param changes what turns them
   */
  public static String render(List<Explanation> explained, List<PlanChange> changes) {
    Page page = new Page();
    page.title("WHAT COULD BE DRAWN OTHERWISE (options to weigh, not orders)");
    if (changes.isEmpty()) {
      page.hanging(INDENT, nothing(explained));
    }
    for (PlanChange change : changes) {
      page.hanging(
          INDENT + "- ",
          change.stage()
              + ": "
              + change.words()
              + "; then "
              + change.becomes().word().replace('-', ' ')
              + ".");
      change.better().forEach(turned -> page.hanging(INDENT + "    better: ", words(turned)));
      change.worse().forEach(turned -> page.hanging(INDENT + "    worse:  ", words(turned)));
      if (change.worse().isEmpty()) {
        page.line(INDENT + "    worse:  nothing");
      }
    }
    return page.text();
  }

  private static String nothing(List<Explanation> explained) {
    boolean kept =
        explained.stream()
            .map(explanation -> explanation.line().verdict())
            .allMatch(v -> v == VerdictKind.MET || v == VerdictKind.NOT_APPLICABLE);
    return kept
        ? "There is nothing to turn: the principle is met, or does not apply."
        : "Nothing that can be tried out on the file turns this verdict on a plan. Only the plan is"
            + " changed, by the moves that the principle names.";
  }

  private static String words(PlanChange.Turned turned) {
    return turned.title()
        + " ("
        + turned.subject()
        + "): from "
        + turned.from().inWords()
        + " to "
        + turned.to().inWords();
  }
}
