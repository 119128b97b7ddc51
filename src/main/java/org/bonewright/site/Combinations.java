package org.bonewright.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** Every combination of the words that some needs of a card can have. */
final class Combinations {

  private final List<Map<String, String>> all;

  Combinations(RuleSet rules, Card card, List<String> needs) {
    List<Map<String, String>> combinations = List.of(Map.of());
    for (String need : needs) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> combination : combinations) {
        for (String word : words(rules, card, need)) {
          Map<String, String> one = new LinkedHashMap<>(combination);
          one.put(need, word);
          longer.add(one);
        }
      }
      combinations = longer;
    }
    this.all = List.copyOf(combinations);
  }

  /** Return all of them, each as the word of each need. */
  List<Map<String, String>> all() {
    return all;
  }

  /**
   * Return, joined by spaces, those for which a limit has a published value; then the word for all
   * the rest, if it has one for them.
   */
  List<String> withValue(Card.Limit limit) {
    List<String> joined =
        new ArrayList<>(
            all.stream()
                .map(words -> joined(limit, words))
                .filter(key -> !Double.isNaN(limit.at(key)))
                .toList());
    if (limit.values().containsKey(Card.Limit.OTHERWISE)) {
      joined.add(Card.Limit.OTHERWISE);
    }
    return joined;
  }

  /** Return the words by which a limit differs, as its card writes them. */
  static String joined(Card.Limit limit, Map<String, String> words) {
    return String.join(" ", limit.by().stream().map(words::get).toList());
  }

  private static List<String> words(RuleSet rules, Card card, String need) {
    return Optional.ofNullable(card.needs().get(need))
        .map(measure -> rules.definition(measure).domain())
        .filter(Domain.Words.class::isInstance)
        .map(Domain.Words.class::cast)
        .map(Domain.Words::words)
        .orElseThrow(() -> new IllegalStateException(card.id() + " has no words for " + need));
  }
}
