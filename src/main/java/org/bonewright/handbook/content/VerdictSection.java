package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** What a principle says with each verdict. */
final class VerdictSection {

  private final Card card;
  private final RuleSet rules;
  private final ExampleBlocks examples;
  private final Sentences sentences;

  VerdictSection(Card card, RuleSet rules, ExampleBlocks examples) {
    this.card = card;
    this.rules = rules;
    this.examples = examples;
    this.sentences = new Sentences(card, rules);
  }

  Section section() {
    List<Block.Row> rows = new ArrayList<>();
    if (card.verdicts().contains(VerdictKind.MET)) {
      rows.add(Block.Row.of(Text.strong("Met"), Text.of("–"), sentences.of(card.say().met(), "")));
    }
    card.say().unmet().forEach((by, sentence) -> rows.add(unmet(by, sentence)));
    rows.add(
        Block.Row.of(
            Text.strong("Unknown"),
            Text.of("–"),
            Text.of(
                "Where something is not on file that could turn the verdict. It then asks for it.")));
    if (card.verdicts().contains(VerdictKind.NOT_APPLICABLE)) {
      rows.add(
          Block.Row.of(
              Text.strong("Not applicable"),
              Text.of("–"),
              sentences.of(card.say().notApplicable(), "")));
    }
    card.tells()
        .forEach(
            told ->
                rows.add(
                    Block.Row.of(
                        Text.strong("Beside it"),
                        Text.of(
                            told.with().stream()
                                .map(kind -> kind.word().replace('-', ' '))
                                .collect(Collectors.joining(", "))),
                        sentences.of(told))));
    return Section.of(
        "verdicts",
        "How it is judged, and what it says",
        Block.says(
            card.verdicts().contains(VerdictKind.NOT_APPLICABLE)
                ? "What stands between angle brackets is filled in by the case."
                : "What stands between angle brackets is filled in by the case. It always applies."),
        new Block.Table("Verdicts", List.of("Verdict", "By", "It says"), rows));
  }

  private Block.Row unmet(String by, String sentence) {
    Set<Severity> severities = examples.severities(by);
    String grave = severities.stream().map(Severity::word).collect(Collectors.joining(" or "));
    return Block.Row.of(
        Text.strong("Unmet").and(grave.isEmpty() ? "" : ", " + grave),
        by(by),
        sentences.of(sentence, by));
  }

  private Text by(String name) {
    if (card.limits().containsKey(name)) {
      return Text.of("limit “" + Wordings.name(name) + "”");
    }
    String measure = card.needs().get(name);
    return Text.of(
        measure == null ? Wordings.name(name) : Wordings.within(rules.definition(measure).title()));
  }
}
