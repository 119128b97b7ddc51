package org.bonewright.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bonewright.markup.Markup;
import org.bonewright.principles.Severity;
import org.bonewright.report.QuestionText;
import org.bonewright.review.Question;
import org.bonewright.review.Review;

/**
 * A review as one HTML page for a meeting: to read on a screen, and to print on A4. It needs no
 * script, and loads nothing.
 */
public final class HtmlReport {

  private static final int MOST_QUESTIONS = 7;

  private final List<Figure> figures;

  /**
   * Make the report.
   *
   * @param figures the drawings that stand in the page, in order; may be empty
   */
  public HtmlReport(List<Figure> figures) {
    this.figures = List.copyOf(figures);
  }

  /** Return the page. */
  public String render(Review review) {
    Markup page = new Markup();
    page.open("html", "lang", "en");
    head(page, review);
    page.open("body");
    page.in("header", () -> heading(page, review));
    page.open("main");
    redFlags(page, review);
    section(page, "In short", () -> page.say("p", review.summary()));
    review.local().ifPresent(local -> HtmlLocal.write(page, local));
    questions(page, review);
    drawings(page);
    if (!review.table().columns().isEmpty()) {
      section(page, "Principles by operation", () -> new HtmlTable(page, review).write());
    }
    HtmlStory story = new HtmlStory(page);
    section(
        page,
        "What was done, and how it stands to the principles",
        () -> review.chapters().stream().filter(c -> !c.planned()).forEach(story::chapter));
    HtmlHistory.write(page, review.history());
    HtmlForces.write(page, review.forces());
    review
        .demands()
        .forEach(
            demands ->
                section(
                    page,
                    "What " + demands.plan() + " must achieve, and whether it does",
                    () -> story.demands(demands)));
    if (!review.acceptances().isEmpty()) {
      section(page, "Accepted by a surgeon", () -> page.list("ul", review.acceptances()));
    }
    closing(page, review);
    page.close().close().close();
    return "<!DOCTYPE html>\n" + page.text() + "\n";
  }

  private static void head(Markup page, Review review) {
    page.open("head");
    page.open("meta", "charset", "utf-8").close();
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").close();
    page.say("title", "Review of " + review.heading().reference());
    page.say("style", style());
    page.close();
  }

  private static String style() {
    try (InputStream in = HtmlReport.class.getResourceAsStream("page.css")) {
      if (in == null) {
        throw new IllegalStateException("built without the style of its page");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void heading(Markup page, Review review) {
    Review.Heading heading = review.heading();
    page.say("h1", "Review of " + heading.reference());
    page.say(
        "p",
        heading.provenance()
            + " case"
            + heading.source().map(source -> ", after " + source).orElse("")
            + review.versions().profile().map(profile -> ", profile " + profile).orElse(""));
    page.say("p", heading.injury() + "; " + heading.patient());
  }

  static void section(Markup page, String title, Runnable content) {
    page.in(
        "section",
        () -> {
          page.say("h2", title);
          content.run();
        });
  }

  private static void redFlags(Markup page, Review review) {
    if (review.redFlags().isEmpty()) {
      section(page, "Red flags", () -> page.say("p", "None recorded."));
      return;
    }
    page.in(
        "section",
        "flags",
        () -> {
          page.say("h2", "Red flags");
          page.say("p", "A clinician answers these before anything below counts.");
          page.list(
              "ul",
              review.redFlags().stream()
                  .map(flag -> flag.what() + " (" + flag.since() + ")")
                  .toList());
        });
  }

  private static void questions(Markup page, Review review) {
    List<Question> all = review.questions();
    if (all.isEmpty()) {
      return;
    }
    section(
        page,
        "Find out first",
        () -> {
          List<String> lines =
              all.stream().map(question -> QuestionText.of(question, review, 1)).toList();
          page.list("ol", lines.subList(0, Math.min(MOST_QUESTIONS, lines.size())));
          if (lines.size() > MOST_QUESTIONS) {
            page.in(
                "details",
                () -> {
                  page.say("summary", (lines.size() - MOST_QUESTIONS) + " more questions");
                  page.list("ul", lines.subList(MOST_QUESTIONS, lines.size()));
                });
          }
        });
  }

  static String word(Severity severity) {
    return severity.word();
  }

  private void drawings(Markup page) {
    if (figures.isEmpty()) {
      return;
    }
    page.in(
        "section",
        "drawings",
        () -> {
          page.say("h2", "Drawings");
          page.say("p", "hint", "A drawing may be wider than the window: scroll it sideways.");
          for (int i = 0; i < figures.size(); i++) {
            Figure figure = figures.get(i);
            String own = "figure-" + (i + 1) + "-";
            page.open("figure");
            page.wide(figure.caption(), () -> page.made(withOwnNames(figure.svg(), own)));
            page.say("figcaption", figure.caption());
            page.close();
          }
        });
  }

  /** Several drawings in one page must not share the names of their parts. */
  private static String withOwnNames(String svg, String own) {
    return svg.substring(svg.indexOf("<svg"))
        .replaceAll("\\bid=\"([^\"]*)\"", "id=\"" + own + "$1\"")
        .replaceAll("url\\(#([^)]*)\\)", "url(#" + own + "$1)")
        .replaceAll(
            "aria-labelledby=\"(\\S+) (\\S+)\"", "aria-labelledby=\"" + own + "$1 " + own + "$2\"");
  }

  private static void closing(Markup page, Review review) {
    section(
        page,
        "Assumed, not looked at, and cautions",
        () -> {
          if (!review.assumptions().isEmpty()) {
            page.in(
                "details",
                () -> {
                  page.say("summary", review.assumptions().size() + " assumptions");
                  page.list(
                      "ul",
                      review.assumptions().stream()
                          .map(a -> a.what() + " (" + String.join(", ", a.subjects()) + ")")
                          .toList());
                });
          }
          page.list("ul", review.notChecked());
          page.list("ul", review.cautions());
          page.say("p", review.versions().inWords());
        });
  }
}
