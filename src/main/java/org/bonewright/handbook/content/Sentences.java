package org.bonewright.handbook.content;

import java.util.List;
import java.util.function.Function;
import org.bonewright.handbook.model.Run;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Slots;

/**
 * The sentences of a card, with their gaps told in words: what will be read stands there by its
 * name, a limit by its value or, where it differs by case, by its values.
 */
final class Sentences {

  private final Card card;
  private final RuleSet rules;

  Sentences(Card card, RuleSet rules) {
    this.card = card;
    this.rules = rules;
  }

  /**
   * Return a sentence.
   *
   * @param sentence as the card has it
   * @param decided the limit for which {@code {limit}} stands, empty for none
   * @throws IllegalStateException if a gap is neither a need nor a limit
   */
  Text of(String sentence, String decided) {
    return filled(sentence, gap -> gap(gap.equals("limit") ? decided : gap));
  }

  /** Return a sentence that is told beside a verdict, its one gap filled by what it tells. */
  Text of(Card.Told told) {
    Run.Gap measure = new Run.Gap(Wordings.within(rules.definition(told.of()).title()));
    return filled(told.say(), gap -> measure);
  }

  private static Text filled(String sentence, Function<String, Run> fill) {
    return new Text(Slots.pieces(sentence, Run.Plain::new, fill));
  }

  private Run gap(String name) {
    String measure = card.needs().get(name);
    if (measure != null) {
      return new Run.Gap(Wordings.within(rules.definition(measure).title()));
    }
    Card.Limit limit = card.limits().get(name);
    if (limit == null) {
      throw new IllegalStateException(card.id() + ": nothing fills the gap " + name);
    }
    List<Double> values = limit.values().values().stream().distinct().sorted().toList();
    return values.size() == 1
        ? new Run.Plain(Wordings.number(values.get(0)))
        : new Run.Gap(
            Wordings.number(values.get(0))
                + " to "
                + Wordings.number(values.get(values.size() - 1))
                + ", by case");
  }
}
