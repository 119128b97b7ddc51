package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NailStressTest {

  private static final HollowCircle NAIL = HollowCircle.solid(10);

  @Test
  void a_round_bar_is_pulled_bent_and_twisted_as_textbooks_say() {
    NailStress bar = NailStress.solid(NAIL, -1000, -10_000, -5000);
    assertThat(bar.tension()).isCloseTo(4 * 1000 / (Math.PI * 100), within(1e-9));
    assertThat(bar.open()).isZero();
    assertThat(bar.bending()).isCloseTo(32 * 10_000 / (Math.PI * 1000), within(1e-9));
    assertThat(bar.shear()).isCloseTo(16 * 5000 / (Math.PI * 1000), within(1e-9));
    assertThat(bar.nominal()).isCloseTo(bar.tension() + bar.bending(), within(1e-9));
  }

  /** Pull and bending towards the hole act on what it leaves, the rest on the whole bar. */
  @Test
  void a_hole_weakens_what_opens_it_and_leaves_the_rest() {
    NailHole hole = new NailHole(NAIL, 5);
    NailStress left = NailStress.atHole(hole, 1000, 10_000, 4000, 5000);
    assertThat(left.tension()).isCloseTo(1000 / hole.netArea(), within(1e-9));
    assertThat(left.open()).isCloseTo(10_000 * 5 / hole.netOpenSide(), within(1e-9));
    assertThat(left.bending()).isCloseTo(32 * 4000 / (Math.PI * 1000), within(1e-9));
    assertThat(left.shear()).isCloseTo(16 * 5000 / (Math.PI * 1000), within(1e-9));
    assertThat(left.nominal()).isCloseTo(left.tension() + left.open(), within(1e-9));
  }

  @Test
  void the_edge_of_a_hole_half_as_wide_as_the_nail_carries_little_more_than_twice_the_stress() {
    assertThat(new NailHole(NAIL, 5).factor()).isCloseTo(2.125, within(1e-12));
  }

  @Test
  void a_hole_of_no_width_is_refused() {
    assertThatThrownBy(() -> new NailHole(NAIL, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
