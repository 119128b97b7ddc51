package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bonewright.mechanics.fatigue.Goodman;
import org.junit.jupiter.api.Test;

/** A metal that bears 200 MPa to and fro for ever, and 800 MPa once. */
class WearTest {

  private static final Goodman METAL = new Goodman(200, 800);

  @Test
  void begins_with_nothing() {
    Wear wear = new Wear();
    assertThat(wear.range()).isZero();
    assertThat(wear.use()).isZero();
    assertThat(wear.cycles()).isInfinite();
  }

  @Test
  void a_load_from_nothing_has_half_of_its_range_as_its_mean() {
    Wear wear = new Wear();
    wear.add(METAL, 100, 200, 120);
    // 120 / 200 + (100 + 100) / 800
    assertThat(wear.use()).isCloseTo(0.85, within(1e-12));
    assertThat(wear.range()).isEqualTo(200);
    assertThat(wear.steady()).isEqualTo(100);
    // 120 / (1 - 200 / 800) = 160 lasts
    assertThat(wear.cycles()).isInfinite();
  }

  @Test
  void keeps_the_largest_range_with_its_own_steady_stress_and_the_worst_of_the_rest() {
    Wear wear = new Wear();
    wear.add(METAL, 100, 200, 120);
    // a smaller range at a sharper notch uses more: 300 / 200 + 50 / 800
    wear.add(METAL, 0, 100, 300);
    assertThat(wear.range()).isEqualTo(200);
    assertThat(wear.steady()).isEqualTo(100);
    assertThat(wear.use()).isCloseTo(1.5625, within(1e-12));
    double cycles = wear.cycles();
    assertThat(cycles).isFinite();
    wear.add(METAL, 10, 201, 1);
    assertThat(wear.range()).isEqualTo(201);
    assertThat(wear.steady()).isEqualTo(10);
    assertThat(wear.use()).isCloseTo(1.5625, within(1e-12));
    assertThat(wear.cycles()).isEqualTo(cycles);
  }

  @Test
  void what_is_hardly_borne_leaves_no_life() {
    Wear wear = new Wear();
    wear.gone();
    assertThat(wear.cycles()).isZero();
    assertThat(wear.use()).isEqualTo(100);
  }
}
