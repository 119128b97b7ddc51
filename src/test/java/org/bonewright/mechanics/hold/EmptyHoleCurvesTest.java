package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EmptyHoleCurvesTest {

  @Test
  void beyond_six_tenths_of_the_bone_the_last_value_holds() {
    assertThat(EmptyHole.torsionHigh(0.8)).isEqualTo(0.22);
    assertThat(EmptyHole.torsionLow(0.8)).isEqualTo(0.22);
    assertThat(EmptyHole.bending(0.8)).isEqualTo(0.22);
  }
}
