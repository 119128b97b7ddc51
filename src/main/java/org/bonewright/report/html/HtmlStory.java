package org.bonewright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bonewright.markup.Markup;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Chapter;
import org.bonewright.review.Headline;
import org.bonewright.review.Line;
import org.bonewright.review.LocalNote;
import org.bonewright.review.PlanDemands;

/** What was done and how it stands, and what a plan must achieve. */
final class HtmlStory {

  private final Markup page;

  HtmlStory(Markup page) {
    this.page = page;
  }

  void chapter(Chapter chapter) {
    page.in(
        "article",
        () -> {
          page.say("h3", chapter.subject());
          page.say("p", chapter.what() + chapter.outcome().map(o -> ". " + o).orElse("") + ".");
          findings("Fits the failure", chapter.fits());
          findings(
              chapter.fits().isEmpty() ? "Unmet" : "Unmet, and does not explain it",
              chapter.others());
          if (chapter.unexplained()) {
            page.say("p", "No grave technical reason is certain. " + chapter.lookAgain());
          }
          folded("Open", chapter.unknown());
          folded("Met", chapter.met());
          if (!chapter.noRecord().isEmpty()) {
            page.say(
                "p",
                "Not recorded then, so that it cannot be judged: "
                    + String.join("; ", chapter.noRecord())
                    + ".");
          }
        });
  }

  void demands(PlanDemands demands) {
    if (demands.demands().isEmpty()) {
      page.say("p", "The history left nothing unmet.");
      return;
    }
    demand("Not achieved", demands, VerdictKind.UNMET);
    demand("Open", demands, VerdictKind.UNKNOWN);
    List<Line> met = answers(demands, VerdictKind.MET);
    folded("Achieved", met.stream().filter(line -> line.labels().isEmpty()).toList());
    folded(
        "In order, but infection comes first",
        met.stream().filter(l -> !l.labels().isEmpty()).toList());
    if (!demands.tensions().isEmpty()) {
      page.say("h3", "Weigh against each other");
      page.list("ul", demands.tensions());
    }
  }

  private static List<Line> answers(PlanDemands demands, VerdictKind kind) {
    return demands.demands().stream()
        .map(PlanDemands.Demand::answer)
        .filter(answer -> answer.verdict() == kind)
        .toList();
  }

  private void demand(String title, PlanDemands demands, VerdictKind kind) {
    List<PlanDemands.Demand> found =
        demands.demands().stream().filter(d -> d.answer().verdict() == kind).toList();
    if (found.isEmpty()) {
      return;
    }
    page.say("h3", title);
    page.in(
        "ul",
        () ->
            found.forEach(
                demand ->
                    page.in(
                        "li",
                        () -> {
                          line(demand.answer());
                          if (!demand.taughtBy().isEmpty()) {
                            page.words(
                                " Unmet before, at " + String.join(", ", demand.taughtBy()) + ".");
                          }
                          if (kind == VerdictKind.UNMET) {
                            page.words(" Would clear it: " + demand.answer().remedy());
                          }
                        })));
  }

  private void findings(String title, List<Headline> headlines) {
    if (headlines.isEmpty()) {
      return;
    }
    page.say("h4", title);
    page.in(
        "ul",
        () ->
            headlines.forEach(
                headline ->
                    page.in(
                        "li",
                        () -> {
                          line(headline.lead());
                          page.words(" ");
                          page.say("small", "[placed by " + headline.placedBy() + "]");
                          nested(headline.nested());
                        })));
  }

  private void nested(List<Line> nested) {
    if (!nested.isEmpty()) {
      page.in("ul", () -> nested.forEach(line -> page.in("li", () -> line(line))));
    }
  }

  private void folded(String title, List<Line> lines) {
    if (lines.isEmpty()) {
      return;
    }
    page.in(
        "details",
        () -> {
          page.say("summary", title + ": " + lines.size());
          page.in("ul", () -> lines.forEach(line -> page.in("li", () -> line(line))));
        });
  }

  private void line(Line line) {
    String severity = severity(line);
    if (!severity.isEmpty()) {
      page.say("strong", severity);
      page.words(" ");
    }
    List<String> remarks = new ArrayList<>();
    line.shareBeside().ifPresent(remarks::add);
    remarks.addAll(line.labels());
    remarks.addAll(line.steps());
    line.otherView().ifPresent(view -> remarks.add("disputed: " + view.strip()));
    if (line.fromMemory()) {
      remarks.add("limit from memory");
    }
    line.accepted().ifPresent(remarks::add);
    line.local().map(LocalNote::inWords).ifPresent(remarks::add);
    page.words(line.title() + ". " + line.words());
    if (!remarks.isEmpty()) {
      page.words(" ");
      page.say("small", "[" + String.join("; ", remarks) + "]");
    }
  }

  private static String severity(Line line) {
    return switch (line.verdict()) {
      case UNMET -> line.severity().map(s -> s.word().toUpperCase(Locale.ROOT)).orElse("");
      case UNKNOWN ->
          line.severity().map(Severity::word).map(worst -> "at worst " + worst).orElse("");
      case MET, NOT_APPLICABLE -> "";
    };
  }
}
