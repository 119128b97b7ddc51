package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every number was worked out on paper from the formula that the section names. */
class SectionsByHandTest {

  @Test
  void a_bar_resists_as_modulus_times_section_says() {
    BeamStiffness bar = new Rectangle(12, 4).of(new Material(200_000, 0.25, 80_000));
    assertThat(bar.axial()).isCloseTo(200_000 * 48, within(1e-6));
    assertThat(bar.weak()).isCloseTo(200_000 * 64, within(1e-6));
    assertThat(bar.strong()).isCloseTo(200_000 * 576, within(1e-6));
    assertThat(bar.torsion()).isCloseTo(80_000 * 202.295, within(100.0));
    // Cowper: 10 * 1.25 / (12 + 11 * 0.25) of the area carries shear.
    assertThat(bar.shearWeak()).isCloseTo(80_000 * 48 * 12.5 / 14.75, within(1e-6));
    assertThat(bar.shearStrong()).isEqualTo(bar.shearWeak());
  }

  @Test
  void a_tube_has_a_wall_and_no_weak_side() {
    HollowCircle tube = new HollowCircle(24, 13);
    assertThat(tube.wall()).isEqualTo(5.5);
    assertThat(tube.middleRadius()).isEqualTo(9.25);
    assertThat(tube.strong()).isEqualTo(tube.weak()).isPositive();
  }

  @Test
  void a_tube_without_a_wall_is_refused() {
    assertThat(new HollowCircle(10, 0).wall()).isEqualTo(5);
    assertThatThrownBy(() -> new HollowCircle(10, 10)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({"0, 4", "12, 0"})
  void a_plate_without_a_side_is_refused(double width, double thickness) {
    assertThatThrownBy(() -> new Rectangle(width, thickness))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
