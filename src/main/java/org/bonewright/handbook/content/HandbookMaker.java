package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bonewright.handbook.model.Entry;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Target;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Glossary;
import org.bonewright.principles.Promise;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;

/** Makes the handbook of a rule set. */
public final class HandbookMaker {

  private final RuleSet rules;
  private final Glossary glossary;
  private final Sourced sourced;
  private final Mentions mentions;

  /**
   * Begin.
   *
   * @param rules the rule set; of one with local limits what is published is shown
   * @param glossary the terms
   */
  public HandbookMaker(RuleSet rules, Glossary glossary) {
    this.rules = rules.published().orElse(rules);
    this.glossary = glossary;
    this.sourced = new Sourced(this.rules);
    this.mentions = new Mentions(this.rules);
  }

  /** Return the handbook. */
  public Handbook make() {
    TermLinks terms = new TermLinks(glossary);
    List<Page> pages = new ArrayList<>(unlinked().stream().map(terms::on).toList());
    pages.add(GlossaryPage.page(glossary));
    return new Handbook(
        rules.version(), rules.hash(), IndexPage.cautions(rules), pages, entries(pages));
  }

  private List<Page> unlinked() {
    List<Page> pages = new ArrayList<>();
    pages.add(new IndexPage(rules).page());
    for (Card card : rules.cards()) {
      pages.add(new PrinciplePage(card, rules, sourced, mentions).page());
    }
    for (Promise promise : rules.promises()) {
      pages.add(new PromisePage(promise, rules, sourced).page());
    }
    pages.add(new FailuresPage(rules, sourced).page());
    pages.add(new MovesPage(rules, mentions).page());
    pages.add(new HistoryPage(rules).page());
    pages.add(new MeasuresPage(rules, mentions).page());
    pages.add(new Bibliography(rules, sourced).page());
    return pages;
  }

  private List<Entry> entries(List<Page> pages) {
    List<Entry> entries = new ArrayList<>();
    for (Card card : rules.cards()) {
      entries.add(
          new Entry(
              "Principle",
              card.title(),
              card.statement(),
              String.join(" ", card.id(), card.why(), Remedy.of(card), card.cause()),
              Places.of(card)));
    }
    for (Promise promise : rules.promises()) {
      Target place = Target.page(Places.path(promise));
      entries.add(new Entry("Promise", promise.title(), promise.statement(), promise.why(), place));
    }
    for (Definition measure : rules.definitions()) {
      entries.add(
          new Entry(
              "Measure",
              measure.title(),
              Wordings.sentence(measure.formula()),
              measure.id(),
              Places.of(measure)));
    }
    for (Glossary.Term term : glossary.terms()) {
      entries.add(
          new Entry(
              "Term",
              Wordings.capital(term.name()),
              term.means(),
              String.join(" ", term.also()),
              Places.term(term.name())));
    }
    pages.stream()
        .filter(page -> page.kind() == Page.Kind.LIST)
        .forEach(page -> entries.add(new Entry("List", page.title(), "", "", page.top())));
    entries.sort(Comparator.comparing((Entry entry) -> Places.sorted(entry.title())));
    return entries;
  }
}
