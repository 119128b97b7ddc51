package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PullOutTest {

  /** Worked by hand: 0.5 + 0.57735 × 0.75 / 1.75 = 0.74744; 52 × 11 × π × 4.5 × 0.74744. */
  @Test
  void a_thread_strips_on_the_cylinder_round_it_less_what_its_turns_leave() {
    PullOut thread = new PullOut(4.5, 3.0, 1.75);
    assertThat(thread.shape()).isCloseTo(0.74744, within(1e-5));
    assertThat(thread.capacity(52, 11)).isCloseTo(6044.1, within(0.5));
  }

  @Test
  void it_bears_as_much_more_as_the_bone_is_stronger_or_the_cortex_thicker() {
    PullOut thread = new PullOut(5.0, 4.3, 1.0);
    double one = thread.capacity(24, 4);
    assertThat(thread.capacity(48, 4)).isCloseTo(2 * one, within(1e-9));
    assertThat(thread.capacity(24, 12)).isCloseTo(3 * one, within(1e-9));
  }
}
