package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.CardExamples;
import org.bonewright.principles.GivenValue;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;

/** The examples of a card in words. The build holds the principle to each of them. */
final class ExampleBlocks {

  private final Card card;
  private final RuleSet rules;
  private final CardExamples examples;

  ExampleBlocks(Card card, RuleSet rules) {
    this.card = card;
    this.rules = rules;
    this.examples = CardExamples.of(rules, card);
  }

  /** Return the section. */
  Section section() {
    List<Block> intro = new ArrayList<>();
    intro.add(
        Block.says(
            "Each build of the program holds the principle to every line here. All are invented."));
    if (!examples.usually().isEmpty()) {
      intro.add(
          Block.says(
              "Where a line says nothing else: "
                  + Wordings.given(examples.usually(), this::measure)
                  + ". All else is not known."));
    } else {
      intro.add(Block.says("Whatever a line does not say is not known."));
    }
    List<Section> parts = new ArrayList<>();
    if (!examples.table().isEmpty()) {
      parts.add(Section.of("examples-table", "Situations", table()));
    }
    if (!examples.scales().isEmpty()) {
      parts.add(
          Section.of(
              "examples-scales",
              "Along one number",
              new Block.Tables(examples.scales().stream().map(this::scale).toList())));
    }
    if (!examples.cases().isEmpty()) {
      parts.add(Section.of("examples-cases", "Whole cases", cases()));
    }
    return new Section("examples", "Examples", intro, parts);
  }

  /** Return how grave the examples show an unmet verdict by this limit to be. */
  Set<Severity> severities(String limit) {
    Set<Severity> severities = new TreeSet<>();
    Stream.of(
            examples.table().stream().map(CardExamples.Line::expect),
            examples.scales().stream().flatMap(scale -> scale.expect().values().stream()),
            examples.cases().stream().map(CardExamples.CaseLine::expect))
        .flatMap(each -> each)
        .map(Expected::of)
        .filter(expected -> expected.limit().filter(limit::equals).isPresent())
        .forEach(expected -> expected.severity().ifPresent(severities::add));
    return severities;
  }

  private Block table() {
    return new Block.Table(
        "Situations",
        List.of("Situation", "Given", "Verdict"),
        examples.table().stream()
            .map(
                line ->
                    Block.Row.of(
                        Text.of(Wordings.capital(line.say())),
                        Text.of(given(line.given())),
                        verdict(line.expect())))
            .toList());
  }

  private Block.Table scale(CardExamples.Scale scale) {
    Definition along = measure(scale.along());
    String given =
        scale.given().isEmpty() ? "" : " (" + Wordings.given(scale.given(), this::measure) + ")";
    return new Block.Table(
        Wordings.capital(scale.say()) + given,
        List.of(along.title(), "Verdict"),
        scale.expect().entrySet().stream()
            .map(
                step ->
                    Block.Row.of(
                        Text.of(Wordings.number(Double.parseDouble(step.getKey()), along)),
                        verdict(step.getValue())))
            .toList());
  }

  private Block cases() {
    return new Block.Table(
        "Whole cases",
        List.of("Case", "Starts from", "Judged on", "Reads", "Verdict"),
        examples.cases().stream()
            .map(
                line ->
                    Block.Row.of(
                        Text.of(Wordings.capital(line.say())),
                        Text.of(start(line)),
                        Text.of(line.on()),
                        Text.of(line.read().isEmpty() ? "–" : read(line.read())),
                        verdict(line.expect())))
            .toList());
  }

  private static String start(CardExamples.CaseLine line) {
    String base = Wordings.name(line.base());
    return switch (line.changes()) {
      case 0 -> base + ", as it is";
      case 1 -> base + ", one change";
      default -> base + ", " + line.changes() + " changes";
    };
  }

  private String read(Map<String, String> read) {
    List<String> parts = new ArrayList<>();
    read.forEach((need, shown) -> parts.add(measure(need).title() + ": " + shown));
    return String.join("; ", parts);
  }

  private String given(Map<String, GivenValue> given) {
    return given.isEmpty() ? "as usual" : Wordings.given(given, this::measure);
  }

  private Text verdict(String shorthand) {
    Expected expected = Expected.of(shorthand);
    Text words = Text.strong(Wordings.capital(expected.words()));
    return expected.limit().map(limit -> words.and(" by ").and(limit(limit))).orElse(words);
  }

  private Text limit(String name) {
    if (card.limits().containsKey(name)) {
      return Text.link(
          "“" + Wordings.name(name) + "”", new Target(Places.path(card), LimitRows.anchor(name)));
    }
    String measure = card.needs().get(name);
    return Text.of(
        measure == null ? Wordings.name(name) : Wordings.within(rules.definition(measure).title()));
  }

  private Definition measure(String need) {
    String measure = card.needs().get(need);
    if (measure == null) {
      throw new IllegalStateException("examples of " + card.id() + ": no need " + need);
    }
    return rules.definition(measure);
  }
}
