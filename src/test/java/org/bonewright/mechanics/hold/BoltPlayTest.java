package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BoltPlayTest {

  private static final BoltPlay PLAY = new BoltPlay(5.3, 5, 10);

  @Test
  void half_of_what_the_hole_is_wider_lets_the_nail_slide_either_way() {
    assertThat(PLAY.along()).isCloseTo(0.15, within(1e-12));
  }

  /** 0.3 mm at either end of 10 mm: 0.03 rad. */
  @Test
  void it_turns_by_what_the_hole_is_wider_over_the_nail() {
    assertThat(PLAY.turns()).isCloseTo(1.71887, within(1e-5));
  }
}
