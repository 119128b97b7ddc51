package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SectionsTest {

  @Test
  void a_tube_is_what_is_left_of_a_circle() {
    HollowCircle tube = new HollowCircle(24, 13);
    assertThat(tube.area()).isCloseTo(319.66, within(0.01));
    assertThat(tube.weak()).isCloseTo(14_884.0, within(15.0));
    assertThat(tube.torsion()).isEqualTo(2 * tube.weak());
    assertThat(tube.coreRadius()).isCloseTo(tube.weak() / tube.area() / 12, within(1e-9));
  }

  @Test
  void a_full_circle_shears_as_cowper_says() {
    assertThat(HollowCircle.solid(4).shearShare(0.3)).isCloseTo(6 * 1.3 / 8.8, within(1e-12));
  }

  @Test
  void a_very_thin_tube_shears_with_about_half_its_area() {
    assertThat(new HollowCircle(100, 99.9).shearShare(0.3)).isCloseTo(0.53, within(0.005));
  }

  @Test
  void a_square_bar_twists_as_the_exact_series_says() {
    assertThat(new Rectangle(1, 1).torsion()).isCloseTo(0.1406, within(0.001));
  }

  @Test
  void the_edge_of_a_small_hole_in_tension_carries_three_times_the_stress() {
    assertThat(new PlateHole(new Rectangle(1000, 5), 1).tensionFactor()).isCloseTo(3, within(0.01));
  }

  @Test
  void a_hole_gives_what_the_section_lost() {
    Material steel = Material.isotropic(200_000, 0.3);
    PlateHole hole = new PlateHole(new Rectangle(12, 4), 5);
    double weak = 5 * (1 / (200_000 * hole.netWeak()) - 1 / (200_000 * 64.0));
    assertThat(hole.give(steel).weak()).isCloseTo(1.25 * weak, within(1e-15));
    assertThat(hole.give(steel).share(0.5).weak()).isCloseTo(1.25 * weak / 2, within(1e-15));
  }
}
