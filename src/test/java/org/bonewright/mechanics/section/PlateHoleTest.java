package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlateHoleTest {

  private static final Material STEEL = new Material(200_000, 0.3, 80_000);
  private static final PlateHole HOLE = new PlateHole(new Rectangle(12, 4), 5);

  /** Two bridges of 3.5 by 4 mm: 4 · 3.5³ · (1/3 − 0.21 · 0.875 · (1 − 0.875⁴/12)) each. */
  @Test
  void two_bridges_twist_beside_the_hole() {
    assertThat(HOLE.netTorsion()).isCloseTo(54.386, within(0.005));
  }

  @Test
  void it_gives_as_long_as_the_hole_is_wide_what_the_section_lost_times_its_spread() {
    Give give = HOLE.give(STEEL);
    assertThat(give.axial()).isCloseTo(1.70 * 5 / 200_000 * (1 / 28.0 - 1 / 48.0), within(1e-13));
    assertThat(give.strong())
        .isCloseTo(1.12 * 5 / 200_000 * (1 / (4 * 1603 / 12.0) - 1 / 576.0), within(1e-15));
    assertThat(give.torsion())
        .isCloseTo(0.35 * 5 / 80_000 * (1 / 54.386 - 1 / 202.295), within(1e-10));
  }

  @Test
  void a_share_of_what_it_gives_is_that_share_of_each() {
    assertThat(new Give(2, 4, 6, 8).share(0.5)).isEqualTo(new Give(1, 2, 3, 4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 12})
  void a_hole_of_no_width_or_of_that_of_the_plate_is_refused(double diameter) {
    Rectangle plate = new Rectangle(12, 4);
    assertThatThrownBy(() -> new PlateHole(plate, diameter))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
