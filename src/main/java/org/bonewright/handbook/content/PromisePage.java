package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;

/** The page of one promise that the program itself keeps. */
final class PromisePage {

  private final Promise promise;
  private final RuleSet rules;
  private final Sourced sourced;

  PromisePage(Promise promise, RuleSet rules, Sourced sourced) {
    this.promise = promise;
    this.rules = rules;
    this.sourced = sourced;
  }

  Page page() {
    List<Section> sections = new ArrayList<>();
    sections.add(Section.of("why", "Why", Block.says(promise.why())));
    sections.add(
        Section.of(
            "proved",
            "Proved by",
            Block.says("Each build of the program runs these tests, and fails where one fails."),
            new Block.Bullets(promise.provedBy().stream().map(PromisePage::test).toList())));
    sections.add(SourceLists.section(promise.sources(), sourced));
    if (!promise.awaiting().isEmpty()) {
      sections.add(
          Section.of(
              "not-covered",
              "Not covered yet",
              new Block.Bullets(promise.awaiting().stream().map(Text::of).toList())));
    }
    sections.add(
        Section.of(
            "history",
            "History",
            new Block.Bullets(
                List.of(
                    Text.of("In the rule set since version ")
                        .and(Text.link(promise.since(), HistoryPage.place(promise.since())))
                        .and("."),
                    Text.of("Reviewed by: " + promise.reviewedBy() + ".")))));
    return new Page(
        Places.path(promise),
        Page.Kind.PROMISE,
        promise.title(),
        List.of(
            Block.says(promise.statement()),
            new Block.Facts(
                List.of(
                    new Block.Fact(
                        "Family",
                        Text.link(rules.family(promise).title(), Places.of(rules.family(promise)))),
                    new Block.Fact(
                        "Judged on", Text.of("no case: the program keeps it whatever the case")),
                    new Block.Fact("Id", Text.of(promise.id()))))),
        sections);
  }

  /** A test is named by a sentence: "Class: what it says". */
  private static Text test(String name) {
    String method = name.substring(name.indexOf('#') + 1);
    String of = name.substring(name.lastIndexOf('.', name.indexOf('#')) + 1, name.indexOf('#'));
    return Text.of(Wordings.capital(method.replace('_', ' ')) + " (" + of.replace('$', ' ') + ")");
  }
}
