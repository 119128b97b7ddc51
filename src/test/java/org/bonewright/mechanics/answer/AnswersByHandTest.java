package org.bonewright.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What answers of the model say of themselves, worked out by hand. */
class AnswersByHandTest {

  private static ScrewDemand screw(
      double pull, OptionalDouble capacity, double bearing, OptionalDouble crushing) {
    return new ScrewDemand(0, 18, pull, 0, 0, 0, capacity, "holds", bearing, crushing);
  }

  private static ScrewDemand pulled(double pull) {
    return screw(pull, OptionalDouble.of(2000), 0, OptionalDouble.empty());
  }

  private static PlateCut cut(double z, double equivalent) {
    return new PlateCut(z, 0, 0, 0, 0, 0, 0, 0, 0, equivalent);
  }

  @Test
  void a_screw_has_as_much_margin_as_its_hold_exceeds_its_pull() {
    assertThat(pulled(500).margin()).hasValue(4);
    assertThat(pulled(4000).margin()).hasValue(0.5);
    // 2000 N and a millionth of it
    assertThat(pulled(0.0021).margin()).isPresent();
    assertThat(pulled(0.002).margin()).isEmpty();
    assertThat(pulled(-500).margin()).isEmpty();
    assertThat(screw(500, OptionalDouble.empty(), 0, OptionalDouble.empty()).margin()).isEmpty();
  }

  @Test
  void bone_is_crushed_by_the_share_of_its_strength_that_a_screw_presses_with() {
    assertThat(screw(0, OptionalDouble.empty(), 30, OptionalDouble.of(120)).crushed())
        .hasValue(0.25);
    assertThat(screw(0, OptionalDouble.empty(), 30, OptionalDouble.empty()).crushed()).isEmpty();
  }

  @Test
  void a_lag_screw_has_its_margin_against_its_tension() {
    assertThat(new LagDemand(10, 300, 0, 0, 0, OptionalDouble.of(1200), false).margin())
        .hasValue(4);
    assertThat(new LagDemand(10, 300, 0, 0, 0, OptionalDouble.empty(), false).margin()).isEmpty();
  }

  @ParameterizedTest(name = "{0} closed: {1}")
  @CsvSource({"0, open", "-0.1, open", "0.01, partly closed", "0.999, partly closed", "1, closed"})
  void ends_are_closed_as_far_as_they_bear(double closed, String state) {
    assertThat(new EndContact(100, closed).state()).isEqualTo(state);
  }

  @Test
  void a_plate_peaks_where_it_is_stressed_most() {
    assertThat(PlateCut.peak(List.of(cut(1, 100), cut(2, 300), cut(3, 200))))
        .map(PlateCut::z)
        .contains(2.0);
    assertThat(PlateCut.peak(List.of())).isEmpty();
  }

  @Test
  void a_tube_bends_by_both_moments_together_and_towards_a_side_by_its_part() {
    TubeCut cut = new TubeCut(50, 100, 3, 4, 7);
    assertThat(cut.bending()).isCloseTo(5, within(1e-12));
    // a moment about y bends towards 0 degrees, one about x towards 90
    assertThat(cut.towards(0)).isCloseTo(-4, within(1e-12));
    assertThat(cut.towards(90)).isCloseTo(3, within(1e-12));
    // 3 sin 30 - 4 cos 30
    assertThat(cut.towards(30)).isCloseTo(1.5 - 3.4641, within(1e-4));
    assertThat(cut.minus(new TubeCut(50, 40, 1, 1, 2))).isEqualTo(new TubeCut(50, 60, 2, 3, 5));
  }
}
