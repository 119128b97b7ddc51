package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RememberedTest {

  /** How many results are kept. */
  private static final int MOST = 128;

  private final List<Integer> asked = new ArrayList<>();
  private final Remembered<Integer, String> remembered =
      new Remembered<>(
          key -> {
            asked.add(key);
            return "result " + key;
          });

  @Test
  void a_result_is_found_once() {
    assertThat(remembered.of(7)).isEqualTo("result 7");
    assertThat(remembered.of(7)).isEqualTo("result 7");
    assertThat(asked).containsExactly(7);
  }

  @Test
  void every_key_has_a_result_of_its_own() {
    assertThat(List.of(remembered.of(1), remembered.of(2), remembered.of(1)))
        .containsExactly("result 1", "result 2", "result 1");
    assertThat(asked).containsExactly(1, 2);
  }

  @Test
  void as_many_as_it_keeps_are_kept() {
    IntStream.range(0, MOST).forEach(remembered::of);
    IntStream.range(0, MOST).forEach(remembered::of);
    assertThat(asked).hasSize(MOST);
  }

  @Test
  void the_oldest_is_forgotten_and_found_again() {
    IntStream.rangeClosed(0, MOST).forEach(remembered::of);
    asked.clear();
    remembered.of(1);
    remembered.of(MOST);
    assertThat(asked).isEmpty();
    assertThat(remembered.of(0)).isEqualTo("result 0");
    assertThat(asked).containsExactly(0);
  }
}
