package org.bonewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.change.Improvement;
import org.bonewright.change.PlanChange;
import org.bonewright.change.Price;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Review;

/** A walk from a plan by single moves, as text that fits a screen. */
public final class ImprovementText {

  private static final String INDENT = "  ";
  private static final String DEEP = "       ";
  private static final int QUESTIONS = 7;
  private static final int TITLES = 2;

  private final Page page = new Page();
  private final Improvement walk;

  private ImprovementText(Improvement walk) {
    this.walk = walk;
  }

  /**
   * Return the text.
   *
   * @param versions what judged it
   */
  public static String render(Improvement walk, Review.Versions versions) {
    ImprovementText text = new ImprovementText(walk);
    text.page.line(
        "How else "
            + walk.plan()
            + " of "
            + walk.reference()
            + (walk.invented() ? " (invented case)" : "")
            + " could be drawn");
    text.page.line("Options to discuss, not orders. No fact was changed, only the plan.");
    versions
        .site()
        .ifPresent(
            site ->
                text.page.hanging(
                    "", "Judged by the local limits of " + site.name() + " where it sets any."));
    text.outcome();
    text.steps();
    text.price();
    text.unmet();
    text.toFindOut();
    text.cautions(versions);
    return text.page.text();
  }

  private void outcome() {
    page.line("");
    infection();
    switch (walk.outcome()) {
      case NOTHING_NEEDED ->
          page.hanging(
              "",
              "NO STEP NEEDED: the plan as drawn leaves nothing critical or major unmet." + open());
      case FOUND ->
          page.hanging(
              "",
              "FOUND: with "
                  + counted(walk.steps().size(), "step")
                  + " the plan leaves nothing critical or major unmet. "
                  + shortness()
                  + open());
      case INFECTION_FIRST ->
          page.hanging(
              "",
              "INFECTION FIRST: it is proven and this plan leaves it untreated. Until it is treated,"
                  + " no step was looked for.");
      case NONE ->
          page.hanging(
              "",
              "NONE FOUND: "
                  + (walk.steps().isEmpty()
                      ? "no step that could be drawn leaves less unmet."
                      : "these steps lead as far as was found.")
                  + " What stays unmet stands below, with the reason.");
    }
    page.hanging(
        "",
        counted(walk.judged(), "plan")
            + " judged in full"
            + (walk.judged() >= walk.most()
                ? ", as many as were asked for; more may find more"
                : "")
            + "; new implants from: "
            + walk.shelf()
            + ".");
    if (!walk.notKept().isEmpty()) {
      page.hanging("", "NOT ON THIS SHELF: " + String.join("; ", walk.notKept()) + ".");
    }
  }

  private void infection() {
    boolean told = walk.outcome() == Improvement.Outcome.INFECTION_FIRST;
    if (walk.infection() == Improvement.Infection.COMES_FIRST && !told) {
      page.hanging(
          "",
          "INFECTION FIRST: what is said of it below comes before "
              + (walk.steps().isEmpty()
                  ? "all else."
                  : "these steps; they are for a later stage."));
    }
    if (walk.infection() == Improvement.Infection.DRAWN_IN_STAGES) {
      page.hanging(
          "",
          "INFECTION FIRST: it is proven. The step in two stages is a sketch to take to the"
              + " infection team, not a plan: what is cut out, how the wound is closed, which drugs,"
              + " where the pins go and whether the later stage still fits are theirs and yours to"
              + " settle.");
    }
  }

  /** What is unknown is said beside every good news. */
  private String open() {
    long critical =
        walk.toFindOut().stream().filter(find -> find.worst() == Severity.CRITICAL).count();
    return walk.toFindOut().isEmpty()
        ? ""
        : " Still open: "
            + counted(walk.toFindOut().size(), "question")
            + ", "
            + (critical == 0 ? "at worst major" : critical + " at worst critical")
            + ", see below.";
  }

  private String shortness() {
    return walk.shortness()
        .filter(known -> walk.steps().size() > 1) // that one is the fewest, goes without saying
        .map(
            known ->
                switch (known) {
                  case NONE_SHORTER -> "Fewer steps do not.";
                  case SHORTER_MAY_EXIST -> "Fewer may do: not all were tried.";
                })
        .orElse("");
  }

  private void steps() {
    if (walk.steps().isEmpty()) {
      return;
    }
    page.title("STEPS, IN ORDER");
    int number = 1;
    for (Improvement.Step step : walk.steps()) {
      page.hanging(
          String.format(Locale.ROOT, "%3d  ", number++), step.stage() + ": " + step.words() + ".");
      turned("clears ", step.better().stream().filter(ImprovementText::isCleared));
      turned("better ", step.better().stream().filter(ImprovementText::isLessened));
      turned("worse  ", step.worse().stream());
    }
  }

  /** What was unmet and is less grave, or was unknown and is met; other doubts are left out. */
  private static boolean isLessened(PlanChange.Turned turned) {
    return !isCleared(turned)
        && (turned.from().verdict() == VerdictKind.UNMET
            || turned.to().verdict() == VerdictKind.MET);
  }

  private static boolean isCleared(PlanChange.Turned turned) {
    return turned.from().verdict() == VerdictKind.UNMET
        && (turned.to().verdict() == VerdictKind.MET
            || turned.to().verdict() == VerdictKind.NOT_APPLICABLE);
  }

  private void turned(String mark, Stream<PlanChange.Turned> all) {
    List<String> words =
        all.map(
                turned ->
                    isCleared(turned)
                        ? turned.title() + " (" + turned.from().grave().word() + ")"
                        : turned.title()
                            + " (from "
                            + turned.from().inWords()
                            + " to "
                            + turned.to().inWords()
                            + ")")
            .toList();
    if (!words.isEmpty()) {
      page.hanging(DEEP + mark, String.join("; ", words) + ".");
    }
  }

  private void price() {
    if (walk.steps().isEmpty()) {
      return;
    }
    page.title("PRICE, ALL STAGES TOGETHER   as drawn   with the steps");
    Price before = walk.before();
    Price after = walk.after();
    row("implants put in", before.implants(), after.implants(), "");
    row("bone laid open for plates", before.exposedMm(), after.exposedMm(), "mm");
    row("holes drilled", before.holes(), after.holes(), "");
    row("length of nails", before.nailMm(), after.nailMm(), "mm");
    row("graft", before.graftMl(), after.graftMl(), "mL");
    row(
        "circumference stripped",
        told(before.strippedPercent()),
        told(after.strippedPercent()),
        "%");
    row("load limited until day", before.limitedDays(), after.limitedDays(), "");
  }

  private static double told(OptionalDouble percent) {
    return percent.orElse(0);
  }

  private void row(String what, double before, double after, String unit) {
    if (before != 0 || after != 0) {
      page.line(
          String.format(
              Locale.ROOT,
              "  %-26s %9s   %14s%s",
              what,
              Dimension.number(before),
              Dimension.number(after),
              unit.isEmpty() ? "" : " " + unit));
    }
  }

  private void unmet() {
    page.title("STAYS UNMET");
    if (walk.unmet().isEmpty()) {
      page.line(INDENT + "nothing critical or major");
    }
    for (Improvement.Stays stays : walk.unmet()) {
      page.hanging(
          INDENT,
          stays.standing().grave().word().toUpperCase(Locale.ROOT)
              + ": "
              + stays.title()
              + " ("
              + stays.subject()
              + "). "
              + stays.found());
      page.hanging(INDENT + INDENT + "why it stays: ", stays.why());
      page.hanging(INDENT + INDENT + "to clear it:  ", stays.remedy());
    }
    if (!walk.milder().isEmpty()) {
      page.hanging(INDENT + "milder: ", String.join("; ", walk.milder()) + ".");
    }
  }

  private void toFindOut() {
    if (walk.toFindOut().isEmpty()) {
      return;
    }
    page.title("TO FIND OUT (unknown is never met; no step answers these)");
    walk.toFindOut().stream().limit(QUESTIONS).forEach(this::question);
    if (walk.toFindOut().size() > QUESTIONS) {
      page.line(
          INDENT
              + "and "
              + counted(walk.toFindOut().size() - QUESTIONS, "more question")
              + "; all with --format json");
    }
  }

  private void question(Improvement.ToFindOut find) {
    List<String> titles = new ArrayList<>(find.titles().stream().limit(TITLES).toList());
    if (find.titles().size() > TITLES) {
      titles.add((find.titles().size() - TITLES) + " more");
    }
    page.hanging(
        INDENT,
        "at worst "
            + (find.worst() == Severity.CRITICAL ? "CRITICAL" : find.worst().word())
            + ": "
            + (find.canBeAnswered()
                ? find.question() + " Needed for: "
                : "no fact settles this, the computed samples are split: "
                    + find.question()
                    + " Concerns: ")
            + String.join("; ", titles)
            + ".");
  }

  private void cautions(Review.Versions versions) {
    page.title("CAUTION");
    page.hanging(
        INDENT,
        "Decision support, not a decision: local protocols and the judgement of the surgeon come"
            + " first. A plan that leaves nothing unmet here is not thereby safe. A step is one way"
            + " among others; draw it, measure it and review it before you use it. "
            + versions.inWords());
  }

  private static String counted(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
