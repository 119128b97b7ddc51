package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** The limits of a card, case by case. */
final class LimitRows {

  private final Card card;
  private final RuleSet rules;
  private final Mentions mentions;

  LimitRows(Card card, RuleSet rules, Mentions mentions) {
    this.card = card;
    this.rules = rules;
    this.mentions = mentions;
  }

  /** Return the place of a limit on the page of its card. */
  static String anchor(String limit) {
    return "limit-" + Places.anchor(Wordings.name(limit));
  }

  /** Return the table of limits; empty where words alone decide. */
  Optional<Block> table() {
    List<Block.Row> rows = new ArrayList<>();
    card.limits().forEach((name, limit) -> add(rows, name, limit));
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Table(
                "Limits",
                List.of("Limit", "Of", "Where", "Value", "Evidence", "Read or from memory"),
                rows));
  }

  private void add(List<Block.Row> rows, String name, Card.Limit limit) {
    Definition of = measure(limit.of());
    String anchor = anchor(name);
    for (Map.Entry<Double, List<String>> value : byValue(limit).entrySet()) {
      rows.add(
          new Block.Row(
              anchor,
              List.of(
                  Text.of(Wordings.name(name)),
                  Places.link(of),
                  Text.of(where(limit, value.getValue())),
                  Text.of(Wordings.number(value.getKey(), of)),
                  mentions.in(limit.evidence()),
                  Text.of(Ground.of(limit.evidence()).words()))));
      anchor = "";
    }
  }

  /** Cases that share a value stand in one row. */
  private static Map<Double, List<String>> byValue(Card.Limit limit) {
    Map<Double, List<String>> cases = new TreeMap<>();
    limit
        .values()
        .forEach((key, value) -> cases.computeIfAbsent(value, v -> new ArrayList<>()).add(key));
    return cases;
  }

  /** Return the limits of these names with their values, a line each. */
  List<Text> inWords(List<String> names) {
    List<Text> lines = new ArrayList<>();
    for (String name : names) {
      Card.Limit limit = card.limits().get(name);
      if (limit != null) {
        Definition of = measure(limit.of());
        List<String> values = new ArrayList<>();
        byValue(limit)
            .forEach(
                (value, keys) ->
                    values.add(
                        Wordings.number(value, of)
                            + (limit.by().isEmpty() ? "" : " (" + where(limit, keys) + ")")));
        lines.add(
            Text.of(of.title() + ", limit “" + Wordings.name(name) + "”: ")
                .and(String.join("; ", values) + "."));
      }
    }
    return lines;
  }

  private String where(Card.Limit limit, List<String> keys) {
    if (limit.by().isEmpty()) {
      return "always";
    }
    if (limit.by().size() == 1) {
      List<String> words = keys.stream().map(Wordings::name).toList();
      return measure(limit.by().get(0)).title() + ": " + Wordings.either(words);
    }
    return String.join(", or ", keys.stream().map(key -> where(limit, key)).toList());
  }

  private String where(Card.Limit limit, String key) {
    if (key.equals(Card.Limit.OTHERWISE)) {
      return "otherwise";
    }
    String[] words = key.split(" ", -1);
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      parts.add(measure(limit.by().get(i)).title() + ": " + Wordings.name(words[i]));
    }
    return String.join("; ", parts);
  }

  private Definition measure(String need) {
    String measure = card.needs().get(need);
    if (measure == null) {
      throw new IllegalStateException(card.id() + ": no need " + need);
    }
    return rules.definition(measure);
  }
}
