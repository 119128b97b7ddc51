package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DecidesTest {

  private static String decides(ToDoubleFunction<Draw> number) {
    List<Draw> draws = Draws.all();
    return Decides.among(draws).of(draws.stream().map(number::applyAsDouble).toList());
  }

  @ParameterizedTest
  @EnumSource
  void what_raises_a_number_is_found(Assumption assumption) {
    assertThat(decides(draw -> Math.exp(5 * draw.place(assumption)))).isEqualTo(assumption.words());
  }

  @ParameterizedTest
  @EnumSource
  void what_lowers_a_number_is_found(Assumption assumption) {
    assertThat(decides(draw -> 1 / (0.01 + draw.place(assumption)))).isEqualTo(assumption.words());
  }

  @ParameterizedTest
  @EnumSource
  void what_moves_a_number_down_and_up_again_is_found(Assumption assumption) {
    assertThat(decides(draw -> Math.pow(draw.place(assumption) - 0.5, 2)))
        .isEqualTo(assumption.words());
  }

  @Test
  void the_larger_of_two_influences_is_found() {
    assertThat(decides(draw -> 3 * draw.place(Assumption.BONE) - draw.place(Assumption.LOAD)))
        .isEqualTo(Assumption.BONE.words());
    assertThat(decides(draw -> draw.place(Assumption.BONE) - 3 * draw.place(Assumption.LOAD)))
        .isEqualTo(Assumption.LOAD.words());
  }

  @Test
  void a_number_that_mostly_stays_at_a_bound_still_tells() {
    assertThat(decides(draw -> Math.min(100, 40 / (0.1 + draw.place(Assumption.THREAD)))))
        .isEqualTo(Assumption.THREAD.words());
  }

  @Test
  void a_number_that_never_changes_names_some_assumption() {
    List<String> words = Arrays.stream(Assumption.values()).map(Assumption::words).toList();
    assertThat(words).contains(decides(draw -> 7)).doesNotHaveDuplicates();
  }

  @Test
  void few_samples_are_enough() {
    List<Draw> draws = Draws.all().subList(0, 3);
    assertThat(Decides.among(draws).of(List.of(1.0, 2.0, 3.0))).isNotBlank();
  }
}
