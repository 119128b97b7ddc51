package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.Family;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;

/** The first page: what the handbook is, its cautions, families with their principles. */
final class IndexPage {

  private final RuleSet rules;

  IndexPage(RuleSet rules) {
    this.rules = rules;
  }

  /** Return what must be known before anything else is read. */
  static List<Text> cautions(RuleSet rules) {
    long reviewed =
        rules.cards().stream().filter(card -> !card.reviewedBy().equals("nobody yet")).count();
    return List.of(
        Text.of(
            "Decision support, not a decision, and not a medical device. It does not replace"
                + " clinical judgement, imaging, local protocols or licensed practice."),
        Text.of(
            reviewed == 0
                ? "No surgeon has yet reviewed these principles."
                : "A surgeon has reviewed "
                    + reviewed
                    + " of "
                    + rules.cards().size()
                    + " principles; each page says which."),
        Text.of("Unknown is never met: what is not on file counts for nothing, and is asked for."),
        Text.of(
            "Many limits are from memory or are conventions of this project. Each limit and each"
                + " source says so."));
  }

  Page page() {
    List<Section> sections = new ArrayList<>();
    sections.add(reading());
    for (Family family : rules.families()) {
      sections.add(family(family));
    }
    sections.add(promises());
    sections.add(profiles());
    return new Page(Places.INDEX, Page.Kind.START, Handbook.NAME, lead(), sections);
  }

  private List<Block> lead() {
    return List.of(
        Block.says(
            "The principles by which Bonewright reviews the fixation of a broken long bone that"
                + " failed or did not unite, and the plan for the next operation. It shows what each"
                + " principle asks, why, by which limits, on what evidence, and what is in dispute."),
        new Block.Caution(cautions(rules)),
        new Block.Paragraph(
            Text.of(
                    "Rule set "
                        + rules.version()
                        + ", content "
                        + rules.hash()
                        + ": "
                        + rules.cards().size()
                        + " principles in "
                        + rules.families().size()
                        + " families, "
                        + rules.promises().size()
                        + " promises of the program, ")
                .and(
                    Text.link(
                        rules.definitions().size() + " measures", Target.page(Places.MEASURES)))
                .and(". It shows what is published. Where a hospital has set a limit of its own,")
                .and(" each review says so beside the verdict.")));
  }

  private static Section reading() {
    return Section.of(
        "how-to-read",
        "How to read it",
        new Block.Facts(
            List.of(
                fact("Met", "What is on file shows that the principle is kept."),
                fact("Unmet", "What is on file shows that it is not kept."),
                fact(
                    "Unknown",
                    "Something is not on file that could turn the verdict. It is asked for."),
                fact("Not applicable", "The principle does not speak to this operation."),
                fact("Note", "Information; it never counts against an operation."),
                fact("Minor", "A departure from usual practice that seldom fails by itself."),
                fact("Major", "A recognised cause of failure."),
                fact(
                    "Critical",
                    "The safety of the patient, or a condition that usually ends in failure."))),
        Block.says(
            "A severity can be raised or lowered by one step at a time, for instance where the same"
                + " principle was unmet before. The review prints each step."));
  }

  private static Block.Fact fact(String name, String value) {
    return new Block.Fact(name, Text.of(value));
  }

  private Section family(Family family) {
    List<Block.Row> rows = new ArrayList<>();
    for (Card card : rules.cards()) {
      if (rules.family(card).equals(family)) {
        rows.add(
            Block.Row.of(
                Places.link(card),
                Text.of(PrinciplePage.severities(card)),
                Text.of(
                    SourceLists.count(card.sources())
                        + card.disputed().map(dispute -> "; disputed").orElse("")),
                Text.of(card.reviewedBy())));
      }
    }
    Block content =
        rows.isEmpty()
            ? Block.says("No principle yet.")
            : new Block.Table(
                family.title(), List.of("Principle", "If unmet", "Sources", "Reviewed by"), rows);
    return Section.of(Places.of(family).anchor(), family.title(), content);
  }

  private Section promises() {
    List<Block.Row> rows = new ArrayList<>();
    for (Promise promise : rules.promises()) {
      rows.add(Block.Row.of(Places.link(promise), Text.of(promise.statement())));
    }
    return Section.of(
        "promises",
        "Promises of the program",
        Block.says(
            "The program keeps these itself. They are never judged on a case; tests prove them."),
        new Block.Table("Promises", List.of("Promise", "What it says"), rows));
  }

  private Section profiles() {
    return Section.of(
        "profiles",
        "Profiles",
        Block.says("A profile narrows what a review shows. All is judged whatever the profile."),
        new Block.Facts(
            rules.profiles().stream()
                .map(
                    profile ->
                        new Block.Fact(
                            Wordings.capital(profile.title()),
                            Text.of(
                                profile.purpose()
                                    + " It shows "
                                    + profile.principles().size()
                                    + " principles. Its name is "
                                    + profile.id()
                                    + ".")))
                .toList()));
  }
}
