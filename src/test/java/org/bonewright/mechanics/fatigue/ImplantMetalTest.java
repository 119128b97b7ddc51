package org.bonewright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ImplantMetalTest {

  /** Smallest yield stress and strength of the standards that each metal names, in MPa. */
  @ParameterizedTest
  @CsvSource({
    "STEEL_ANNEALED, 190, 490",
    "STEEL_COLD_WORKED, 690, 860",
    "TITANIUM_GRADE_4, 483, 550",
    "TITANIUM_ALLOY, 780, 860"
  })
  void the_strengths_are_those_of_the_standards(ImplantMetal metal, double yield, double strength) {
    assertThat(metal.yieldStress()).isEqualTo(yield);
    assertThat(metal.strength()).isEqualTo(strength);
  }

  @ParameterizedTest
  @EnumSource
  void no_metal_bears_for_ever_what_breaks_it_at_once(ImplantMetal metal) {
    assertThat(metal.enduranceLow()).isPositive().isLessThanOrEqualTo(metal.endurance());
    assertThat(metal.endurance()).isLessThanOrEqualTo(metal.enduranceHigh());
    assertThat(metal.enduranceHigh()).isLessThan(metal.strength());
  }

  @Test
  void titanium_bends_about_twice_as_far_as_steel() {
    double steel = ImplantMetal.STEEL_COLD_WORKED.elastic().young();
    assertThat(steel / ImplantMetal.TITANIUM_ALLOY.elastic().young()).isBetween(1.6, 1.9);
  }
}
