package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTest {

  @Test
  void one_that_is_the_same_in_all_directions_shears_as_its_other_constants_say() {
    Material steel = Material.isotropic(193_000, 0.3);
    assertThat(steel.young()).isEqualTo(193_000);
    assertThat(steel.poisson()).isEqualTo(0.3);
    assertThat(steel.shear()).isCloseTo(74_230.77, within(0.01));
  }

  @Test
  void one_that_does_not_narrow_is_a_material() {
    assertThat(new Material(1, 0, 1).poisson()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0, 0.3, 80000", "200000, 0.3, 0", "200000, -0.01, 80000", "200000, 0.5, 80000"})
  void what_no_material_can_be_is_refused(double young, double poisson, double shear) {
    assertThatThrownBy(() -> new Material(young, poisson, shear))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no material");
  }
}
