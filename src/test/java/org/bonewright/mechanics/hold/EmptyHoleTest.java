package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EmptyHoleTest {

  @Test
  void the_curves_run_through_what_was_published() {
    assertThat(EmptyHole.torsionHigh(0.2)).isCloseTo(0.66, within(1e-12));
    assertThat(EmptyHole.torsionHigh(0.6)).isCloseTo(0.22, within(1e-12));
    assertThat(EmptyHole.torsionLow(0.1)).isCloseTo(0.77, within(1e-12));
    assertThat(EmptyHole.bending(0.2)).isCloseTo(0.62, within(1e-12));
  }

  @Property(tries = 300)
  void the_lower_curve_never_lies_above_the_upper(@ForAll @DoubleRange(min = 0, max = 1) double r) {
    assertThat(EmptyHole.torsionLow(r)).isLessThanOrEqualTo(EmptyHole.torsionHigh(r) + 1e-12);
  }

  @Property(tries = 300)
  void a_larger_hole_never_leaves_more(
      @ForAll @DoubleRange(min = 0, max = 0.6) double r,
      @ForAll @DoubleRange(min = 0, max = 0.4) double more) {
    assertThat(EmptyHole.torsionLow(r + more)).isLessThanOrEqualTo(EmptyHole.torsionLow(r) + 1e-12);
    assertThat(EmptyHole.bending(r + more)).isLessThanOrEqualTo(EmptyHole.bending(r) + 1e-12);
  }
}
