package org.bonewright.report;

import java.util.List;
import org.bonewright.principles.Severity;
import org.bonewright.review.Chapter;
import org.bonewright.review.Headline;
import org.bonewright.review.Line;

/** The account of one operation after another, as text. */
final class StoryText {

  private final Page page;
  private final boolean verbose;

  StoryText(Page page, boolean verbose) {
    this.page = page;
    this.verbose = verbose;
  }

  void chapter(Chapter chapter) {
    String outcome = chapter.outcome().map(o -> ". " + o).orElse("");
    page.hanging(chapter.subject() + "  ", chapter.what() + outcome + ".");
    headlines("  fits   ", chapter.fits());
    headlines(chapter.fits().isEmpty() ? "  unmet  " : "  also   ", chapter.others());
    if (chapter.unexplained()) {
      page.hanging(
          "  unmet  ",
          "Nothing that explains the failure. Infection, host, load and what is not looked at here"
              + " remain.");
    }
    chapter.unknown().forEach(line -> unknown(line));
    if (!chapter.noRecord().isEmpty()) {
      page.hanging("  not recorded then  ", String.join("; ", chapter.noRecord()));
    }
    if (!chapter.met().isEmpty()) {
      page.hanging(
          "  met    ", String.join("; ", chapter.met().stream().map(Line::title).toList()));
      if (verbose) {
        chapter.met().forEach(line -> detail(line.title() + ": " + line.words(), line));
      }
    }
  }

  private void headlines(String mark, List<Headline> headlines) {
    for (Headline headline : headlines) {
      Line lead = headline.lead();
      page.hanging(mark, severity(lead) + lead.title() + ". " + lead.words() + remarks(lead));
      if (verbose) {
        detail("", lead);
      }
      if (!headline.nested().isEmpty()) {
        page.hanging(
            " ".repeat(mark.length()) + "with ",
            String.join(
                "; ",
                headline.nested().stream().map(line -> severity(line) + line.title()).toList()));
      }
      if (verbose) {
        headline.nested().forEach(line -> detail(line.title() + ": " + line.words(), line));
      }
    }
  }

  private void unknown(Line line) {
    page.hanging(
        "  open   ", "at worst " + worst(line) + ", " + line.title() + ". " + line.words());
    if (verbose) {
      detail("", line);
    }
  }

  private void detail(String first, Line line) {
    if (!first.isEmpty()) {
      page.hanging("           ", first);
    }
    line.workings().forEach(working -> page.hanging("           - ", working));
    line.turns().forEach(turn -> page.hanging("           > ", turn));
    line.otherView().ifPresent(view -> page.hanging("           other view: ", view));
    page.hanging("           why: ", line.why());
    line.sources().forEach(source -> page.hanging("           source: ", source));
  }

  /** The severity as a word that stands out without colour: milder ones in small letters. */
  static String severity(Line line) {
    return line.severity()
        .map(s -> (s.compareTo(Severity.MAJOR) >= 0 ? s.name() : s.word()) + ": ")
        .orElse("");
  }

  private static String worst(Line line) {
    return line.severity().map(Severity::word).orElse("a note");
  }

  /** What must be said beside a finding: labels, steps of severity, memory, acceptance. */
  static String remarks(Line line) {
    StringBuilder remarks = new StringBuilder();
    line.labels().forEach(label -> remarks.append(" [").append(label).append("]"));
    line.steps().forEach(step -> remarks.append(" [").append(step).append("]"));
    if (line.otherView().isPresent()) {
      remarks.append(" [disputed]");
    }
    if (line.fromMemory()) {
      remarks.append(" [sources from memory]");
    }
    line.accepted().ifPresent(reason -> remarks.append(" [accepted: ").append(reason).append("]"));
    return remarks.toString();
  }
}
