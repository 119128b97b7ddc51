package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Profile;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleChanges;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;

/** The page of one principle: everything that its card says. */
final class PrinciplePage {

  private final Card card;
  private final RuleSet rules;
  private final Sourced sourced;
  private final ExampleBlocks examples;
  private final LimitRows limits;
  private final Mentions mentions;

  PrinciplePage(Card card, RuleSet rules, Sourced sourced, Mentions mentions) {
    this.card = card;
    this.rules = rules;
    this.sourced = sourced;
    this.mentions = mentions;
    this.examples = new ExampleBlocks(card, rules);
    this.limits = new LimitRows(card, rules, mentions);
  }

  Page page() {
    List<Section> sections = new ArrayList<>();
    sections.add(Section.of("why", "Why", Block.says(card.why())));
    sections.add(inputs());
    sections.add(limits());
    sections.add(new VerdictSection(card, rules, examples).section());
    sections.add(unmet());
    card.disputed().ifPresent(dispute -> sections.add(disagreement(dispute)));
    sections.add(examples.section());
    sections.add(SourceLists.section(card.sources(), sourced));
    if (!card.awaiting().isEmpty()) {
      sections.add(
          Section.of(
              "open-questions",
              "Open questions",
              Block.says("A surgeon must answer or confirm these before the principle is trusted."),
              new Block.Bullets(card.awaiting().stream().map(mentions::in).toList())));
    }
    sections.add(local());
    new Neighbours(card, rules, mentions).section().ifPresent(sections::add);
    sections.add(history());
    return new Page(Places.path(card), Page.Kind.PRINCIPLE, card.title(), lead(), sections);
  }

  private List<Block> lead() {
    List<Block> lead = new ArrayList<>();
    card.deprecated()
        .ifPresent(reason -> lead.add(new Block.Caution(List.of(Text.of("Retired. " + reason)))));
    lead.add(Block.says(card.statement()));
    lead.add(
        new Block.Facts(
            List.of(
                new Block.Fact(
                    "Family", Text.link(rules.family(card).title(), Places.of(rules.family(card)))),
                new Block.Fact("Judged on", Text.of(SubjectWords.of(card.subject()))),
                new Block.Fact("If unmet", Text.of(severities(card))),
                new Block.Fact("Sources", Text.of(SourceLists.count(card.sources()))),
                new Block.Fact("Reviewed by", Text.of(card.reviewedBy())),
                new Block.Fact("Id", Text.of(card.id())))));
    return lead;
  }

  /** Return how grave a principle can be: by its rule, and after every step. */
  static String severities(Card card) {
    Severity least = card.grades().stream().min(Severity::compareTo).orElseThrow();
    Severity most = card.grades().stream().max(Severity::compareTo).orElseThrow();
    String range = least == most ? least.word() : least.word() + " to " + most.word();
    return most == card.highest() ? range : range + "; raised, " + card.highest().word();
  }

  private Section inputs() {
    List<Block.Row> rows = new ArrayList<>();
    for (String id : card.needs().values()) {
      Definition measure = rules.definition(id);
      rows.add(
          Block.Row.of(
              Places.link(measure),
              Text.of(Wordings.domain(measure)),
              mentions.in(Wordings.sentence(measure.formula()))));
    }
    return Section.of(
        "inputs",
        "What it reads",
        new Block.Table("Inputs", List.of("Measure", "Values", "How it is obtained"), rows));
  }

  private Section limits() {
    return Section.of(
        "limits",
        "Limits",
        limits.table().orElse(Block.says("It has no limit in numbers: words alone decide.")));
  }

  private Section unmet() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.says("Severity: " + severities(card) + "."));
    blocks.add(new Block.Paragraph(Text.strong("What would clear it: ").and(Remedy.of(card))));
    blocks.add(
        new Block.Paragraph(
            Text.of("Kinds of change: ")
                .and(
                    Text.joined(
                        card.remedyMoves().stream()
                            .map(
                                move ->
                                    Text.link(
                                        rules.moves().words().getOrDefault(move, move),
                                        Places.move(move)))
                            .toList(),
                        "; "))
                .and(".")));
    blocks.add(
        Block.says(
            card.overridable()
                ? "A surgeon may accept it unmet, with a written reason. It stays visible then."
                : "It cannot be accepted unmet."));
    return Section.of("unmet", "If it is unmet", blocks.toArray(Block[]::new));
  }

  private Section disagreement(Card.Dispute dispute) {
    List<Text> ours = new ArrayList<>();
    ours.add(Text.of(card.statement()));
    ours.addAll(limits.inWords(dispute.limits()));
    return Section.of(
        "disagreement",
        "Disagreement",
        Block.says(
            "The literature does not agree. Unmet by these limits alone, it is major at most."),
        new Block.Beside(
            new Block.View("As judged here", ours),
            new Block.View("The other view", List.of(Text.of(dispute.view())))));
  }

  private Section local() {
    Optional<String> never = card.siteMayNotChange();
    List<String> profiles =
        rules.profiles().stream()
            .filter(profile -> profile.principles().contains(card.id()))
            .map(Profile::title)
            .toList();
    return Section.of(
        "local",
        "What a hospital may change",
        Block.says(
            never
                .map(reason -> "Neither limits nor severity: " + Wordings.within(reason))
                .orElse(
                    "Limits and severity, each with a reason, a responsible role and a day. The"
                        + " published value is shown beside.")),
        Block.says("Shown in the profiles: " + Wordings.all(profiles) + "."));
  }

  private Section history() {
    List<Text> lines = new ArrayList<>();
    lines.add(
        Text.of("In the rule set since version ")
            .and(Text.link(card.since(), HistoryPage.place(card.since())))
            .and("; shown as of version " + rules.version() + "."));
    RuleChanges.built().versions().stream()
        .filter(version -> HistoryPage.changes(version, card))
        .map(version -> HistoryPage.place(version.version(), card))
        .forEach(lines::add);
    lines.add(Text.of("Reviewed by: " + card.reviewedBy() + "."));
    if (!card.formerIds().isEmpty()) {
      lines.add(Text.of("Called before: " + String.join(", ", card.formerIds()) + "."));
    }
    if (card.level() > 1) {
      lines.add(Text.of("It reads the verdicts of other principles, and is judged after them."));
    }
    return Section.of("history", "History", new Block.Bullets(lines));
  }
}
