package org.bonewright.report;

import java.util.List;
import java.util.Locale;
import org.bonewright.review.Assumption;
import org.bonewright.review.Chapter;
import org.bonewright.review.History;
import org.bonewright.review.PlanDemands;
import org.bonewright.review.Question;
import org.bonewright.review.RedFlag;
import org.bonewright.review.Review;

/** A review as text for a terminal: red flags first, readable without colour. */
public final class TextReport {

  private static final int MOST_QUESTIONS = 7;
  private static final int MOST_ASSUMPTIONS = 1;
  private static final int MOST_LESSONS = 3;

  /** With fewer operations the account of each says as much as a table of them. */
  private static final int LEAST_FOR_TABLE = 3;

  private final boolean verbose;

  /**
   * Make the report.
   *
   * @param verbose whether to show the arithmetic, what would turn each verdict, and every question
   */
  public TextReport(boolean verbose) {
    this.verbose = verbose;
  }

  /** Return the text. */
  public String render(Review review) {
    Page page = new Page();
    heading(page, review);
    redFlags(page, review.redFlags());
    page.title("IN SHORT").hanging("  ", review.summary());
    review.local().ifPresent(local -> LocalText.section(page, local));
    questions(page, review);
    story(page, review);
    if (verbose) {
      ForceText.section(page, review.forces());
    }
    for (PlanDemands demands : review.demands()) {
      if (verbose || demands.decisive()) {
        page.title("WHAT " + demands.plan() + " MUST ACHIEVE, AND WHETHER IT DOES");
        review.chapters().stream()
            .filter(chapter -> chapter.subject().startsWith(demands.plan() + "/"))
            .forEach(chapter -> plan(page, chapter));
        review
            .forces()
            .inShort(demands.plan())
            .ifPresent(words -> page.hanging("  model ", words + "."));
        new DemandText(page, verbose).demands(demands);
      } else {
        new DemandText(page, false).inOneLine(demands);
      }
    }
    if (!review.acceptances().isEmpty()) {
      page.title("ACCEPTED BY A SURGEON");
      review.acceptances().forEach(line -> page.hanging("  ", line));
    }
    assumptions(page, review.assumptions());
    page.title("NOT LOOKED AT, AND CAUTIONS");
    page.hanging(
        "  ",
        String.join(" ", review.notChecked())
            + " "
            + String.join(" ", review.cautions())
            + " "
            + review.versions().inWords());
    return page.text();
  }

  private void story(Page page, Review review) {
    List<Chapter> done = review.chapters().stream().filter(c -> !c.planned()).toList();
    if (done.isEmpty() && review.demands().isEmpty()) {
      return;
    }
    if (!done.isEmpty()) {
      page.title(
          "WHAT WAS DONE, AND HOW IT STANDS TO THE PRINCIPLES (fits: placed by how it failed)");
      done.forEach(new StoryText(page, verbose, review.forces())::chapter);
    }
    if (!verbose && done.size() < LEAST_FOR_TABLE) {
      return;
    }
    if (!verbose && !TableText.tells(review.table())) {
      page.title("WHAT CAME BACK: nothing");
      history(page, review.history());
      return;
    }
    page.title(
        (verbose ? "ALL PRINCIPLES" : "WHAT CAME BACK")
            + " (severity: unmet; ?: open, at worst so; dot: does not apply)");
    TableText.write(page, review.table(), verbose);
    history(page, review.history());
  }

  private void history(Page page, History history) {
    if (!history.neverAddressed().isEmpty()) {
      page.hanging("  not yet put right: ", listed(history.neverAddressed()));
    }
    if (!history.triedTwice().isEmpty()) {
      page.hanging("  tried twice: ", listed(history.triedTwice()));
    }
    history.prognosis().ifPresent(line -> page.hanging("  published: ", line));
  }

  private String listed(List<String> lessons) {
    int shown = verbose ? lessons.size() : Math.min(MOST_LESSONS, lessons.size());
    int more = lessons.size() - shown;
    return String.join("; ", lessons.subList(0, shown))
        + (more == 0 ? "." : "; and " + more + " more.");
  }

  private static void heading(Page page, Review review) {
    Review.Heading heading = review.heading();
    page.hanging(
        "",
        "Review of "
            + heading.reference()
            + " ("
            + heading.provenance()
            + " case"
            + heading.source().map(source -> ", after " + source).orElse("")
            + ")"
            + review.versions().profile().map(profile -> ", profile " + profile).orElse(""));
    page.hanging("", heading.injury() + "; " + heading.patient());
  }

  private static void redFlags(Page page, List<RedFlag> flags) {
    if (flags.isEmpty()) {
      page.title("RED FLAGS: none recorded");
      return;
    }
    page.title("RED FLAGS - a clinician answers these before anything below counts");
    flags.forEach(flag -> page.hanging("  ! ", flag.what() + " (" + flag.since() + ")"));
  }

  private void questions(Page page, Review review) {
    List<Question> questions = review.questions();
    if (questions.isEmpty()) {
      return;
    }
    page.title("FIND OUT FIRST");
    int shown = verbose ? questions.size() : Math.min(MOST_QUESTIONS, questions.size());
    for (int i = 0; i < shown; i++) {
      Question question = questions.get(i);
      page.hanging(
          String.format(Locale.ROOT, "  %d ", i + 1),
          QuestionText.of(question, review, verbose ? Integer.MAX_VALUE : 1)
              + (verbose ? " [" + question.field() + "]" : ""));
    }
    if (shown < questions.size()) {
      page.line("  and " + (questions.size() - shown) + " more with --verbose");
    }
  }

  private static void plan(Page page, Chapter chapter) {
    page.hanging("  ", chapter.subject() + ": " + chapter.what());
  }

  private void assumptions(Page page, List<Assumption> assumptions) {
    if (assumptions.isEmpty()) {
      return;
    }
    int shown = verbose ? assumptions.size() : Math.min(MOST_ASSUMPTIONS, assumptions.size());
    List<String> lines =
        assumptions.stream()
            .limit(shown)
            .map(a -> told(a.what()) + " (" + String.join(", ", a.subjects()) + ")")
            .toList();
    String more =
        shown < assumptions.size()
            ? "; and " + (assumptions.size() - shown) + " more with --verbose"
            : "";
    page.line("").hanging("ASSUMED: ", String.join("; ", lines) + more);
  }

  /** What it was made from is told in full only. */
  private String told(String assumption) {
    return verbose ? assumption : assumption.replaceFirst(": .*", "");
  }
}
