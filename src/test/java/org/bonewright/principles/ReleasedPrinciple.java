package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;

/**
 * What decides the verdicts of a principle: what a release of the rules is remembered by.
 *
 * @param title its title
 * @param needs the measures that it reads, by need
 * @param words the words that a need can have, for needs with words
 * @param limits its limits, without their evidence
 * @param rules its rules as written, each on one line
 */
record ReleasedPrinciple(
    String title,
    Map<String, String> needs,
    Map<String, List<String>> words,
    Map<String, Card.Limit> limits,
    List<String> rules) {

  ReleasedPrinciple {
    needs = new TreeMap<>(needs);
    words = new TreeMap<>(words);
    limits = new TreeMap<>(limits);
  }

  /** Return what decides the verdicts of a card by its rules. */
  static ReleasedPrinciple of(
      Card card, Function<String, Definition> definitions, List<RuleText> rules) {
    Map<String, List<String>> words = new TreeMap<>();
    card.needs()
        .forEach(
            (need, measure) -> {
              if (definitions.apply(measure).domain() instanceof Domain.Words domain) {
                words.put(need, domain.words());
              }
            });
    Map<String, Card.Limit> limits = new TreeMap<>();
    card.limits()
        .forEach(
            (name, limit) ->
                limits.put(
                    name,
                    new Card.Limit(limit.of(), limit.by(), new TreeMap<>(limit.values()), "")));
    return new ReleasedPrinciple(
        card.title(), card.needs(), words, limits, rules.stream().map(RuleText::line).toList());
  }
}
