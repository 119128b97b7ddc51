package org.bonewright.report;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Profile;
import org.bonewright.principles.Promise;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.SiteChanges;
import org.bonewright.review.LocalChange;
import org.bonewright.review.LocalWording;

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
        .site()
        .ifPresent(
            site ->
                page.line(
                    "Site " + site.name() + " " + site.hash() + " (*: local beside published)"));
    for (Card card : rules.cards()) {
      List<LocalChange> local = changes(card);
      page.line(
          row(rules.family(card).letter(), card.id(), card.title())
              + LocalText.mark(!local.isEmpty()));
      local.forEach(change -> page.hanging("     ", change.inWords()));
    }
    page.title("Promises: kept by the program, never judged on a case");
    for (Promise promise : rules.promises()) {
      page.line(row(rules.family(promise).letter(), promise.id(), promise.title()));
    }
    return page.text();
  }

  /** Return the list of the principles that a profile shows, a line each, and what it is for. */
  public String principles(Profile profile) {
    Page page = new Page();
    page.line("Profile " + profile.id() + ": " + profile.title());
    page.hanging("", profile.purpose() + " Whatever it leaves out is judged all the same.");
    page.line("");
    return page.text() + new CatalogueText(rules.shown(profile)).principles();
  }

  /** Return everything that a site has set, beside what is published. */
  public String site(SiteChanges site) {
    Page page = new Page();
    page.line(
        "Site "
            + site.name()
            + (site.invented() ? " (invented)" : "")
            + ", content "
            + site.hash()
            + "; limits changed: "
            + site.limits().size()
            + ", severities: "
            + site.severities().size()
            + (site.loads().isEmpty() ? "" : ", bones with other loads: " + site.loads().size()));
    new LocalWording(rules)
        .changes(site)
        .forEach(
            change -> {
              page.line("  " + change.principle().orElse(change.title()));
              page.hanging("    ", change.inWords());
            });
    return page.text();
  }

  private List<LocalChange> changes(Card card) {
    return rules.site().stream()
        .flatMap(site -> new LocalWording(rules).changes(site).stream())
        .filter(change -> change.isOf(card.id()))
        .toList();
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
    card.needs().forEach((need, measure) -> page.hanging("  ", need + ": " + named(measure)));
    card.tells().forEach(told -> page.hanging("  ", "told, not judged: " + named(told.of())));
    page.title("Limits");
    rules.published(card).limits().forEach((name, limit) -> limit(page, name, limit));
    local(page, card);
    page.title("When unmet")
        .hanging(
            "  ",
            "As "
                + String.join(" or ", card.grades().stream().map(Severity::word).toList())
                + ". "
                + Remedy.of(card));
    card.disputed().ifPresent(d -> page.title("The other view").hanging("  ", d.view()));
    sources(page, card.sources());
    openQuestions(page, card.awaiting());
    page.line("");
    page.line("Reviewed by: " + card.reviewedBy() + ". Since rule set " + card.since() + ".");
    page.line("In the profiles: " + String.join(", ", profiles(rules, card)) + ".");
    return page.text();
  }

  private String named(String measure) {
    return rules.definition(measure).title() + " [" + measure + "]";
  }

  private void local(Page page, Card card) {
    List<LocalChange> changes = changes(card);
    if (!changes.isEmpty()) {
      page.title("Set by this site");
      changes.forEach(change -> page.hanging("  ", change.inWords()));
    }
    card.siteMayNotChange()
        .ifPresent(reason -> page.title("No site may change it").hanging("  ", reason));
  }

  /** Return the ids of the profiles that show a principle. */
  static List<String> profiles(RuleSet rules, Card card) {
    return rules.profiles().stream()
        .filter(profile -> profile.principles().contains(card.id()))
        .map(Profile::id)
        .toList();
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
        + measures(
            Stream.concat(card.needs().values().stream(), card.tells().stream().map(Card.Told::of))
                .distinct()
                .sorted()
                .map(rules::definition)
                .toList());
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
