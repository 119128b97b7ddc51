package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stress at the edge of a hole, against what handbooks print (from memory). */
class StressAtHoleTest {

  private static PlateHole hole(double width, double thickness, double diameter) {
    return new PlateHole(new Rectangle(width, thickness), diameter);
  }

  /** Kirsch 1898: a small hole in a wide plate under tension raises the stress threefold. */
  @Test
  void tension_is_raised_threefold_at_a_small_hole() {
    assertThat(hole(10_000, 5, 5).tensionFactor()).isCloseTo(3, within(0.01));
  }

  /** Howland 1930, as in Peterson's charts, over the net section. */
  @ParameterizedTest
  @CsvSource({"0.1, 2.73", "0.2, 2.51", "0.3, 2.36", "0.4, 2.24", "0.5, 2.16"})
  void tension_in_a_narrow_plate_is_raised_as_the_charts_show(double share, double factor) {
    assertThat(hole(20, 5, 20 * share).tensionFactor()).isCloseTo(factor, within(0.02 * factor));
  }

  /**
   * Thin plates: (5 + 3 ν) / (3 + ν), 1.79 for ν of 0.3 (Goodier 1936); a hole that is small beside
   * the thickness sees tension at the surface, hence about 3.
   */
  @Test
  void bending_is_raised_between_the_two_bounds_of_theory() {
    assertThat(hole(1e7, 1, 1000).bendingFactor()).isCloseTo(5.9 / 3.3, within(0.01));
    assertThat(hole(1e7, 1000, 1).bendingFactor()).isCloseTo(3, within(0.03));
    assertThat(hole(1e5, 5, 5).bendingFactor()).isBetween(5.9 / 3.3, 3.0);
  }
}
