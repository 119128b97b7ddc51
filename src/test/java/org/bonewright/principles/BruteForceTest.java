package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The verdict on what is partly known is that of every way in which it can become known. */
class BruteForceTest {

  private static final int INPUTS = 2000;
  private static final int COMPLETIONS = 200;
  private static final int DEEP_INPUTS = 20_000;
  private static final int DEEP_COMPLETIONS = 200;

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_verdict_is_that_of_every_completion(Card card) {
    assertThat(new BruteForce(AllCells.RULES, card).differences(INPUTS, COMPLETIONS)).isEmpty();
  }

  @Tag("deep")
  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_verdict_is_that_of_very_many_completions(Card card) {
    assertThat(new BruteForce(AllCells.RULES, card).differences(DEEP_INPUTS, DEEP_COMPLETIONS))
        .isEmpty();
  }
}
