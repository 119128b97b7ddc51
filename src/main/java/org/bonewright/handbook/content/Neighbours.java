package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.FailureMode;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Words;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** What stands near a principle: its family, its cause, remedies that pull against its own. */
final class Neighbours {

  private final Card card;
  private final RuleSet rules;
  private final Mentions mentions;

  Neighbours(Card card, RuleSet rules, Mentions mentions) {
    this.card = card;
    this.rules = rules;
    this.mentions = mentions;
  }

  Optional<Section> section() {
    List<Section> parts = new ArrayList<>();
    add(parts, "opposed", "Remedies that pull the other way", opposed());
    add(parts, "failures", "Looked at when a failure is read as", failures());
    add(
        parts,
        "cause",
        "Same cause: " + Wordings.name(card.cause()),
        rules.cards().stream()
            .filter(other -> other.cause().equals(card.cause()) && !other.id().equals(card.id()))
            .map(Places::link)
            .toList());
    add(
        parts,
        "family",
        "Same family: " + rules.family(card).title(),
        rules.cards().stream()
            .filter(other -> rules.family(other).equals(rules.family(card)))
            .filter(other -> !other.id().equals(card.id()))
            .map(Places::link)
            .toList());
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("neighbours", "Neighbours", List.of(), parts));
  }

  private static void add(List<Section> parts, String anchor, String title, List<Text> lines) {
    if (!lines.isEmpty()) {
      parts.add(Section.of("near-" + anchor, title, new Block.Bullets(lines)));
    }
  }

  private List<Text> opposed() {
    return rules.moves().tensions().stream()
        .filter(tension -> tension.between().contains(card.id()))
        .flatMap(
            tension ->
                tension.between().stream()
                    .filter(id -> !id.equals(card.id()))
                    .flatMap(id -> rules.card(id).stream())
                    .map(
                        other ->
                            Places.link(other)
                                .and(": ")
                                .and(mentions.in(Wordings.sentence(tension.settled())))))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private List<Text> failures() {
    List<Text> lines = new ArrayList<>();
    for (FailureMode mode : FailureMode.values()) {
      rules
          .failures()
          .place(mode, card.id())
          .ifPresent(
              place ->
                  lines.add(
                      Text.link(
                              Words.of(mode),
                              new Target(Places.FAILURES, FailuresPage.anchor(mode)))
                          .and(", place " + place + " in its row")));
    }
    return lines;
  }
}
