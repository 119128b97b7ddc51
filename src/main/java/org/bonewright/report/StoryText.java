package org.bonewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bonewright.principles.Severity;
import org.bonewright.review.Chapter;
import org.bonewright.review.ForceTable;
import org.bonewright.review.Headline;
import org.bonewright.review.Line;

/** The account of one operation after another, as text. */
final class StoryText {

  private static final String FITS = "fits";
  private static final int MOST_IN_FULL = 3;

  /** Of what does not fit the failure only the first critical one is told; the rest by title. */
  private static final int MOST_BESIDE = 1;

  private static final int MOST_OPEN = 2;
  private static final int MOST_NESTED = 2;

  private final Page page;
  private final boolean verbose;
  private final ForceTable forces;

  StoryText(Page page, boolean verbose, ForceTable forces) {
    this.page = page;
    this.verbose = verbose;
    this.forces = forces;
  }

  void chapter(Chapter chapter) {
    String outcome = chapter.outcome().map(o -> ". " + o).orElse("");
    int met = chapter.met().size();
    page.hanging(
        chapter.subject() + "  ",
        chapter.what() + outcome + "." + (verbose || met == 0 ? "" : " Met: " + met + "."));
    forces.inShort(chapter.subject()).ifPresent(words -> page.hanging("  model  ", words + "."));
    headlines("  " + FITS + "   ", chapter.fits(), Severity.NOTE, MOST_IN_FULL);
    boolean first = chapter.fits().isEmpty();
    headlines(
        first ? "  unmet  " : "  also   ",
        chapter.others(),
        first ? Severity.MAJOR : Severity.CRITICAL,
        first ? MOST_IN_FULL : MOST_BESIDE);
    if (chapter.unexplained()) {
      page.hanging(
          "  reason ",
          (chapter.unknown().isEmpty()
                  ? "No grave technical reason found."
                  : "No grave technical reason for certain; what is open below may be one.")
              + " "
              + chapter.lookAgain());
    }
    open(chapter.unknown());
    if (!chapter.noRecord().isEmpty()) {
      page.hanging(
          "  open   ",
          verbose
              ? "not recorded then: " + String.join("; ", chapter.noRecord())
              : chapter.noRecord().size()
                  + " on infection or healing, of which nothing was recorded then");
    }
    met(chapter.met());
  }

  /**
   * The first findings of a group in full, as long as they are at least this grave; of the rest the
   * titles.
   */
  private void headlines(String mark, List<Headline> headlines, Severity least, int most) {
    List<Line> rest = new ArrayList<>();
    int shown = 0;
    for (Headline headline : headlines) {
      boolean grave = headline.lead().severity().orElse(Severity.NOTE).compareTo(least) >= 0;
      if (verbose || (grave && shown < most)) {
        headline(mark, headline);
        shown++;
      } else {
        rest.add(headline.lead());
        rest.addAll(headline.nested());
      }
    }
    if (!rest.isEmpty()) {
      page.hanging(shown == 0 ? mark : " ".repeat(mark.length()), TitlesBySeverity.of(rest));
    }
  }

  private void headline(String mark, Headline headline) {
    Line lead = headline.lead();
    page.hanging(
        mark,
        severity(lead)
            + lead.title()
            + ". "
            + lead.words()
            + remarks(lead)
            + placed(headline, mark));
    if (verbose) {
      detail("", lead);
    }
    if (!headline.nested().isEmpty()) {
      String with = " ".repeat(mark.length()) + "with ";
      page.hanging(with, nested(headline.nested(), Page.WIDTH - with.length()));
    }
    if (verbose) {
      headline
          .nested()
          .forEach(line -> detail(line.title() + ": " + line.words() + beside(line), line));
    }
  }

  /**
   * The gravest of what shares a cause, by title, and the rest by number: where there is a rest, no
   * more titles than a line holds.
   */
  private String nested(List<Line> all, int width) {
    List<Line> gravestFirst =
        all.stream()
            .sorted(
                Comparator.comparing((Line line) -> line.severity().orElse(Severity.NOTE))
                    .reversed())
            .toList();
    int shown = verbose ? all.size() : Math.min(MOST_NESTED, all.size());
    while (shown > 1
        && shown < all.size()
        && nested(gravestFirst.subList(0, shown), all).length() > width) {
      shown--;
    }
    return nested(gravestFirst.subList(0, shown), all);
  }

  private static String nested(List<Line> named, List<Line> all) {
    int more = all.size() - named.size();
    return TitlesBySeverity.of(named) + (more == 0 ? "" : "; " + more + " more");
  }

  /** The title of the account says that the failure mode places what fits. */
  private String placed(Headline headline, String mark) {
    return mark.strip().equals(FITS) && !verbose ? "" : " [by " + headline.placedBy() + "]";
  }

  /** What the past leaves open is folded: the grave by title, the rest by number. */
  private void open(List<Line> unknown) {
    if (verbose) {
      unknown.forEach(this::unknown);
      return;
    }
    if (!unknown.isEmpty()) {
      page.hanging("  open   ", TitlesBySeverity.atWorst(unknown, MOST_OPEN));
    }
  }

  private void met(List<Line> met) {
    if (met.isEmpty() || !verbose) {
      return;
    }
    page.hanging("  met    ", String.join("; ", met.stream().map(Line::title).toList()));
    met.forEach(line -> detail(line.title() + ": " + line.words() + beside(line), line));
  }

  private void unknown(Line line) {
    page.hanging(
        "  open   ",
        "at worst " + worst(line) + ", " + line.title() + ". " + line.words() + beside(line));
    detail("", line);
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
    return line.severity().map(s -> TitlesBySeverity.word(s) + ": ").orElse("");
  }

  private static String worst(Line line) {
    return line.severity().map(Severity::word).orElse("a note");
  }

  /** What stands behind the words of any verdict: the share of samples, and what is local. */
  static String beside(Line line) {
    return share(line) + LocalText.remark(line);
  }

  private static String share(Line line) {
    return line.shareBeside().map(share -> " [" + share + "]").orElse("");
  }

  /**
   * What must be said beside a finding: share of samples, labels, steps of severity, memory,
   * acceptance.
   */
  static String remarks(Line line) {
    StringBuilder remarks = new StringBuilder(share(line));
    line.labels().forEach(label -> remarks.append(" [").append(label).append("]"));
    line.steps().forEach(step -> remarks.append(" [").append(step).append("]"));
    if (line.otherView().isPresent()) {
      remarks.append(" [disputed]");
    }
    if (line.fromMemory()) {
      remarks.append(" [sources from memory]");
    }
    line.accepted().ifPresent(reason -> remarks.append(" [accepted: ").append(reason).append("]"));
    remarks.append(LocalText.remark(line));
    return remarks.toString();
  }
}
