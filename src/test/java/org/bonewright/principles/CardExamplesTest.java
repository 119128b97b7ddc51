package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.bonewright.principles.GivenValue.Amount;
import org.bonewright.principles.GivenValue.NotKnown;
import org.bonewright.principles.GivenValue.NotThere;
import org.bonewright.principles.GivenValue.Sampled;
import org.bonewright.principles.GivenValue.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What people are shown of the examples is what the principles are held to. */
class CardExamplesTest {

  private static final RuleSet RULES = RuleSet.built();

  static Collection<Card> cards() {
    return RULES.cards();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void shows_every_line_and_case_that_the_principle_is_held_to(Card card) {
    Examples held = Examples.of(RULES, card);
    CardExamples shown = CardExamples.of(RULES, card);
    int steps = shown.scales().stream().mapToInt(scale -> scale.expect().size()).sum();
    assertThat(shown.table().size() + steps).isEqualTo(held.lines().size());
    assertThat(shown.cases()).hasSameSizeAs(held.cases());
    assertThat(shown.table().stream().map(CardExamples.Line::expect))
        .isSubsetOf(held.lines().stream().map(Examples.Line::expect).toList());
  }

  @Test
  void tells_apart_what_an_example_gives() {
    CardExamples span = CardExamples.of(RULES, RULES.card("plate-span-ratio").orElseThrow());
    CardExamples.Line nail = span.table().get(0);
    assertThat(nail.given()).containsEntry("ratio", new NotThere());
    assertThat(span.usually()).containsEntry("reach", new Amount(3, 3));
    assertThat(span.table())
        .anyMatch(line -> line.given().containsValue(new NotKnown()))
        .anyMatch(line -> line.given().containsValue(new Amount(6, 9)))
        .anyMatch(line -> line.given().containsValue(new Words(List.of("simple", "wedge"))));

    CardExamples strain = CardExamples.of(RULES, RULES.card("strain-in-band").orElseThrow());
    assertThat(strain.table())
        .flatExtracting(line -> line.given().values())
        .filteredOn(Sampled.class::isInstance)
        .extracting(value -> ((Sampled) value).percent())
        .contains(Map.of(5.0, 10, 20.0, 90));
  }
}
