package org.bonewright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GoodmanTest {

  private static final Goodman STEEL = new Goodman(300, 860);

  @Test
  void below_the_endurance_limit_metal_lasts() {
    assertThat(STEEL.cycles(299, 0)).isInfinite();
    assertThat(STEEL.use(299, 0)).isLessThan(1);
  }

  @Test
  void a_steady_stress_takes_from_what_is_left_to_alternate() {
    assertThat(STEEL.cycles(299, 100)).isFinite();
    assertThat(STEEL.use(150, 430)).isCloseTo(1, within(1e-12));
    assertThat(STEEL.cycles(150, 430)).isInfinite();
  }

  @Test
  void the_line_runs_through_its_two_points() {
    assertThat(STEEL.cycles(0.9 * 860, 0)).isCloseTo(1e3, within(1e-6));
    assertThat(STEEL.cycles(300.000001, 0)).isCloseTo(1e7, within(1.0));
  }

  @Test
  void a_steady_stress_beyond_the_strength_breaks_it_at_once() {
    assertThat(STEEL.cycles(1, 900)).isZero();
  }

  @Test
  void pressure_is_not_counted_as_help() {
    assertThat(STEEL.use(150, -400)).isEqualTo(STEEL.use(150, 0));
  }

  @Test
  void a_notch_counts_nine_tenths() {
    assertThat(Goodman.notch(2)).isCloseTo(1.9, within(1e-12));
    assertThat(Goodman.notch(1)).isEqualTo(1);
  }
}
