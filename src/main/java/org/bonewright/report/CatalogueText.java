package org.bonewright.report;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;

/** The catalogue of principles and measures, as text. */
public final class CatalogueText {

  private static final int ID = 42;

  private final RuleSet rules;

  /** Make the catalogue of a rule set. */
  public CatalogueText(RuleSet rules) {
    this.rules = rules;
  }

  /** Return the list of principles, a line each. */
  public String principles() {
    Page page = new Page();
    page.line("Rule set " + rules.version() + " " + rules.hash());
    rules
        .cards()
        .forEach(card -> page.line(row(rules.family(card).letter(), card.id(), card.title())));
    if (!rules.waiting().isEmpty()) {
      page.line("");
      page.line("Not judged yet:");
      rules
          .waiting()
          .forEach(
              waiting -> {
                page.line(row(waiting.family().letter(), waiting.id(), waiting.title()));
                page.hanging("     ", "waits for " + waiting.waitsFor());
              });
    }
    page.title("Promises: kept by the program, never judged on a case");
    for (Promise promise : rules.promises()) {
      page.line(row(rules.family(promise).letter(), promise.id(), promise.title()));
    }
    return page.text();
  }

  /** Return everything that the card of a promise says, with the tests that prove it. */
  public String promise(Promise promise) {
    Page page = new Page();
    page.line(promise.id() + " - " + promise.title());
    page.hanging("", promise.statement());
    page.hanging("", "The program keeps this itself; it is never judged on a case.");
    page.title("Why").hanging("  ", promise.why());
    page.title("Proved by");
    promise.provedBy().forEach(test -> page.hanging("  ", test));
    sources(page, promise.sources());
    openQuestions(page, promise.awaiting());
    page.line("");
    page.line("Reviewed by: " + promise.reviewedBy() + ". Since rule set " + promise.since() + ".");
    return page.text();
  }

  private static String row(String letter, String id, String title) {
    return String.format(Locale.ROOT, "%s  %-" + ID + "s  %s", letter, id, title);
  }

  /** Return everything that the card of a principle says. */
  public String principle(Card card) {
    Page page = new Page();
    page.line(card.id() + " - " + card.title());
    page.hanging("", card.statement());
    page.title("Why").hanging("  ", card.why());
    page.title("What it reads");
    card.needs()
        .forEach(
            (need, measure) ->
                page.hanging(
                    "  ", need + ": " + rules.definition(measure).title() + " [" + measure + "]"));
    page.title("Limits");
    card.limits().forEach((name, limit) -> limit(page, name, limit));
    page.title("When unmet")
        .hanging(
            "  ",
            "As "
                + String.join(" or ", card.grades().stream().map(Severity::word).toList())
                + ". "
                + card.remedy());
    card.disputed().ifPresent(d -> page.title("The other view").hanging("  ", d.view()));
    sources(page, card.sources());
    openQuestions(page, card.awaiting());
    page.line("");
    page.line("Reviewed by: " + card.reviewedBy() + ". Since rule set " + card.since() + ".");
    return page.text();
  }

  private static void sources(Page page, List<Card.Source> sources) {
    page.title("Sources");
    sources.forEach(source -> page.hanging("  ", source.shown()));
  }

  private static void openQuestions(Page page, List<String> questions) {
    if (!questions.isEmpty()) {
      page.title("Open questions");
      questions.forEach(question -> page.hanging("  ", question));
    }
  }

  private static void limit(Page page, String name, Card.Limit limit) {
    List<String> values =
        limit.values().entrySet().stream()
            .map(
                e ->
                    (e.getKey().equals("otherwise") && limit.by().isEmpty() ? "" : e.getKey() + " ")
                        + Dimension.number(e.getValue()))
            .toList();
    page.hanging(
        "  ",
        name
            + " of "
            + limit.of()
            + ": "
            + String.join(", ", values)
            + " ("
            + limit.evidence()
            + ")");
  }

  /** Return every measure with its formula and source. */
  public String measures() {
    return measures(rules.definitions());
  }

  /** Return the measures that a principle reads. */
  public String measures(Card card) {
    return "\n"
        + measures(new TreeSet<>(card.needs().values()).stream().map(rules::definition).toList());
  }

  private static String measures(Collection<Definition> definitions) {
    Page page = new Page();
    for (Definition definition : definitions) {
      page.line(definition.id() + " - " + definition.title() + " (" + domain(definition) + ")");
      page.hanging("    ", definition.formula() + ".");
      page.hanging("    ", "From: " + String.join(", ", definition.inputs()) + ".");
      page.hanging("    ", "Source: " + definition.source() + ".");
    }
    return page.text();
  }

  private static String domain(Definition definition) {
    return definition.domain() instanceof Definition.Domain.Numbers numbers
        ? numbers.shownUnit().isEmpty() ? "number" : numbers.shownUnit()
        : String.join(" | ", ((Definition.Domain.Words) definition.domain()).words());
  }
}
