package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Moves;
import org.bonewright.principles.RuleSet;

/** The page of what remedies do, and which of them pull against each other. */
final class MovesPage {

  private final RuleSet rules;
  private final Mentions mentions;

  MovesPage(RuleSet rules, Mentions mentions) {
    this.rules = rules;
    this.mentions = mentions;
  }

  Page page() {
    return new Page(
        Places.MOVES,
        Page.Kind.LIST,
        "Remedies",
        List.of(
            Block.says(
                "Each remedy is made of kinds of change. Here is what each kind would clear, and"
                    + " what is done where two remedies pull against each other.")),
        List.of(
            Section.of("kinds", "Kinds of change", kinds()),
            Section.of("opposed", "Changes that exclude each other", opposed()),
            Section.of("tensions", "Principles whose remedies pull apart", tensions())));
  }

  private Block kinds() {
    List<Block.Row> rows = new ArrayList<>();
    rules.moves().words().entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.comparing(Places::sorted)))
        .forEach(
            move ->
                rows.add(
                    new Block.Row(
                        move.getKey(),
                        List.of(
                            Text.of(Wordings.capital(move.getValue())),
                            Text.joined(
                                rules.cards().stream()
                                    .filter(card -> card.remedyMoves().contains(move.getKey()))
                                    .map(Places::link)
                                    .toList(),
                                "; ")))));
    return new Block.Table("Kinds of change", List.of("Change", "Would help to clear"), rows);
  }

  private Block opposed() {
    return new Block.Bullets(
        rules.moves().opposed().stream()
            .map(
                pair ->
                    pair.stream()
                        .sorted()
                        .map(
                            move ->
                                Text.link(
                                    rules.moves().words().getOrDefault(move, move),
                                    Places.move(move)))
                        .toList())
            .map(pair -> Text.joined(pair, ", against: "))
            .toList());
  }

  private Block tensions() {
    List<Block.Row> rows = new ArrayList<>();
    for (Moves.Tension tension : rules.moves().tensions()) {
      List<Text> between =
          tension.between().stream()
              .sorted()
              .flatMap(id -> rules.card(id).stream())
              .map(Places::link)
              .toList();
      rows.add(
          Block.Row.of(
              Text.joined(between, ", against: "),
              mentions.in(Wordings.sentence(tension.settled()))));
    }
    return new Block.Table(
        "Principles whose remedies pull apart", List.of("Between", "What settles it"), rows);
  }
}
