package org.bonewright.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.principles.RuleTrace;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Explanation;
import org.bonewright.review.Line;
import org.bonewright.review.LocalChange;

/** An explanation as text, from the verdict down to its sources. */
public final class ExplanationText {

  private static final String INDENT = "  ";

  private ExplanationText() {}

  /** Return one or several explanations, one after the other. */
  public static String render(List<Explanation> explanations) {
    Page page = new Page();
    explanations.forEach(explanation -> one(page, explanation));
    page.title("CAUTION");
    page.hanging(
        INDENT,
        "Decision support, not a decision: local protocols and the judgement of the surgeon come"
            + " first. What is unknown never counts as met.");
    explanations.stream()
        .findFirst()
        .ifPresent(first -> page.hanging(INDENT, first.versions().inWords()));
    return page.text().stripLeading();
  }

  private static void one(Page page, Explanation explanation) {
    Line line = explanation.line();
    page.title(line.title() + " (" + line.principle() + ", on " + line.subject() + ")");
    page.hanging(INDENT, explanation.statement() + " [" + explanation.family() + "]");
    page.hanging(INDENT, verdict(line) + ". " + line.words());
    line.shareBeside().ifPresent(share -> page.hanging(INDENT, "Model: " + share + "."));
    line.steps().forEach(step -> page.hanging(INDENT + "- ", step));
    line.labels().forEach(label -> page.hanging(INDENT + "- ", label));
    line.local()
        .ifPresent(note -> note.changes().forEach(c -> page.hanging(INDENT + "- ", local(c))));
    page.hanging(INDENT + "Why it matters: ", line.why());
    inputs(page, explanation);
    limits(page, explanation);
    rules(page, explanation);
    section(page, "WHAT IS MISSING", explanation.asks());
    section(page, "WHAT WOULD TURN IT, ALL ELSE BEING EQUAL", line.turns());
    if (!line.remedy().isEmpty()) {
      section(page, "WHAT WOULD CLEAR IT", List.of(line.remedy()));
    }
    section(page, "WHERE IT COMES FROM", line.sources());
    section(page, "THE OTHER VIEW", explanation.dispute().stream().toList());
    section(page, "OPEN QUESTIONS", explanation.awaiting());
    page.hanging(INDENT, "Reviewed by: " + explanation.reviewedBy() + ".");
  }

  private static String local(LocalChange change) {
    return "local: "
        + change.what()
        + " "
        + change.local()
        + " instead of "
        + change.published()
        + " ("
        + change.reason()
        + "; "
        + change.by()
        + ")";
  }

  private static String verdict(Line line) {
    String word = line.verdict().word().replace('-', ' ').toUpperCase(Locale.ROOT);
    Optional<Severity> severity = line.severity();
    if (line.verdict() == VerdictKind.UNKNOWN) {
      return word + severity.map(worst -> ", at worst " + worst.word()).orElse("");
    }
    return word + severity.map(grade -> ", " + grade.word()).orElse("");
  }

  private static void inputs(Page page, Explanation explanation) {
    page.title("WHAT WAS READ");
    for (Explanation.Input input : explanation.inputs()) {
      Line.Measured reading = input.reading();
      String unit = reading.unit().isEmpty() ? "" : " " + reading.unit();
      page.hanging(
          INDENT, reading.title() + ": " + reading.shown() + unit + " (" + reading.kind() + ")");
      if (!reading.working().isEmpty()) {
        page.hanging(INDENT + INDENT + "here: ", reading.working());
      }
      page.hanging(INDENT + INDENT + "rule: ", input.formula());
      page.hanging(INDENT + INDENT + "from: ", String.join(", ", input.from()));
      page.hanging(INDENT + INDENT + "by:   ", input.source());
    }
  }

  private static void limits(Page page, Explanation explanation) {
    if (explanation.limits().isEmpty()) {
      return;
    }
    page.title("LIMITS THAT HOLD HERE");
    for (Explanation.HeldLimit limit : explanation.limits()) {
      page.hanging(
          INDENT,
          limit.of()
              + ": "
              + limit.value()
              + (limit.unit().isEmpty() ? "" : " " + limit.unit())
              + " ("
              + limit.name()
              + "; "
              + limit.evidence()
              + ")");
    }
  }

  private static void rules(Page page, Explanation explanation) {
    page.title("THE RULES (each needs all of its conditions)");
    for (RuleTrace rule : explanation.rules()) {
      page.hanging(INDENT, fires(rule.fires()) + says(rule));
      rule.conditions()
          .forEach(
              condition ->
                  page.hanging(INDENT + INDENT + mark(condition.holds()), condition.words() + "."));
    }
  }

  private static String says(RuleTrace rule) {
    String told = rule.name().replaceFirst("^[^:]*:? *", "");
    return rule.finds()
            .map(finds -> "unmet, " + finds.severity().word() + ", by " + finds.limit())
            .orElse("the principle applies")
        + (told.isEmpty() ? "" : ": " + told);
  }

  private static String fires(RuleTrace.Holds holds) {
    return switch (holds) {
      case ALWAYS -> "fires: ";
      case SOMETIMES -> "may fire: ";
      case NEVER -> "does not fire: ";
    };
  }

  private static String mark(RuleTrace.Holds holds) {
    return switch (holds) {
      case ALWAYS -> "true:  ";
      case SOMETIMES -> "open:  ";
      case NEVER -> "false: ";
    };
  }

  private static void section(Page page, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      page.title(title);
      lines.forEach(line -> page.hanging(INDENT + "- ", line));
    }
  }
}
