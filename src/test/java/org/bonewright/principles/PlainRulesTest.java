package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlainRulesTest {

  private static final PlainRules PLAIN = PlainRules.of(RuleFiles.built());

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void rules_read_as_data_say_of_every_world_what_the_compiled_ones_say(Card card) {
    assertThat(AllCells.of(card))
        .isNotEmpty()
        .allSatisfy(world -> assertThat(PLAIN.judge(world)).isEqualTo(AllCells.said(world)));
  }

  @Test
  void every_rule_of_a_principle_is_read() {
    assertThat(AllCells.cards().stream().mapToInt(card -> PLAIN.of(card.id()).size()).sum())
        .isEqualTo(RuleText.all(RuleFiles.built()).size());
  }

  @Test
  void a_rule_that_says_something_else_is_refused_with_its_name() {
    String odd =
        "rule \"odd one\" when $w : World( principle == \"p\", value(\"n\") < 3 )"
            + " then verdicts.applies($w); end";
    assertThatThrownBy(() -> PlainRules.of(List.of(odd)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("odd one");
  }
}
