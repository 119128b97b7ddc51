package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** The page of measures: what each is, how it is obtained, and who reads it. */
final class MeasuresPage {

  private final RuleSet rules;
  private final Mentions mentions;

  MeasuresPage(RuleSet rules, Mentions mentions) {
    this.rules = rules;
    this.mentions = mentions;
  }

  Page page() {
    Map<String, List<Section>> letters = new TreeMap<>();
    rules.definitions().stream()
        .sorted(Comparator.comparing(measure -> Places.sorted(measure.title())))
        .forEach(
            measure ->
                letters
                    .computeIfAbsent(letter(measure.title()), letter -> new ArrayList<>())
                    .add(measure(measure)));
    List<Section> sections = new ArrayList<>();
    letters.forEach(
        (letter, parts) ->
            sections.add(
                new Section(
                    "letter-" + letter.toLowerCase(Locale.ROOT), letter, List.of(), parts)));
    return new Page(
        Places.MEASURES,
        Page.Kind.LIST,
        "Measures",
        List.of(
            Block.says(
                "A measure is a number or a word that the program takes from a case. Principles only"
                    + " compare measures with limits; whatever needs arithmetic is a measure."),
            Block.says(
                "There are "
                    + rules.definitions().size()
                    + ", in the order of the alphabet. Names with a slash are fields of a case"
                    + " file.")),
        sections);
  }

  static String letter(String title) {
    return Places.sorted(title).substring(0, 1).toUpperCase(Locale.ROOT);
  }

  private static boolean reads(Card card, String measure) {
    return card.needs().containsValue(measure)
        || card.tells().stream().anyMatch(told -> told.of().equals(measure));
  }

  private Section measure(Definition measure) {
    List<Text> users =
        rules.cards().stream().filter(card -> reads(card, measure.id())).map(Places::link).toList();
    return Section.of(
        measure.id(),
        measure.title(),
        new Block.Facts(
            List.of(
                new Block.Fact("How it is obtained", mentions.in(formula(measure))),
                new Block.Fact("Values", Text.of(Wordings.domain(measure))),
                new Block.Fact(
                    "Taken from",
                    measure.inputs().isEmpty()
                        ? Text.of("nothing else")
                        : Text.joined(measure.inputs().stream().map(mentions::in).toList(), ", ")),
                new Block.Fact("Source", mentions.in(measure.source())),
                new Block.Fact(
                    "Read by",
                    users.isEmpty()
                        ? Text.of("no principle itself; other measures are made of it")
                        : Text.joined(users, ", ")),
                new Block.Fact("Id", Text.of(measure.id())))));
  }

  private static String formula(Definition measure) {
    return Wordings.sentence(measure.formula());
  }
}
