package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.bonewright.mechanics.construct.BarFixator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An external fixator as the model takes it, and what it does. */
class FixatorMakerTest {

  private static final String IT = "/operations/0/fixation/0";
  private static final CaseText FIXED =
      Sketches.bridged().at("/operations/0", "{fixation: [" + Sketches.FIXATOR + "]}");

  private static FixatorSketch sketch(CaseText text) {
    return Sketches.of(text).fixator().orElseThrow();
  }

  private static BarFixator built(CaseText text) {
    return new Builder(Sketches.of(text), Draw.MIDDLE).build().beside().fixator().orElseThrow();
  }

  private static List<Double> samples(String measure, CaseText text) {
    return ((Reading.Sampled) Sketches.scene(text).read(measure)).samples();
  }

  @Test
  void its_pins_lie_as_far_from_the_line_as_the_file_has_them() {
    double centre = Sketches.scene(FIXED).zone().centre().orElseThrow().middle();
    assertThat(sketch(FIXED).pins())
        .extracting(pin -> pin.at().middle() + centre)
        .containsExactly(70.0, 110.0, 150.0, 210.0, 250.0, 290.0);
  }

  @Test
  void its_bars_stand_as_far_off_as_the_file_has_them_the_second_beyond_the_first() {
    List<BarFixator.Bar> bars = built(FIXED).bars();
    assertThat(bars).hasSize(2);
    assertThat(bars.get(0).distance()).isCloseTo(50, within(1e-9));
    assertThat(bars.get(1).distance()).isBetween(65.0, 90.0);
    assertThat(bars.get(0).section().outer()).isCloseTo(11, within(1e-9));
  }

  @Test
  void azimuths_are_counted_from_its_bars_where_there_is_no_plate() {
    assertThat(built(FIXED).azimuth()).isZero();
    assertThat(Sketches.of(FIXED).facing()).contains(315.0);
  }

  @Test
  void a_load_from_any_side_is_taken_where_the_side_of_its_pins_is_not_told() {
    CaseText untold = FIXED;
    for (int pin = 0; pin < 6; pin++) {
      untold = untold.without(IT + "/pins/" + pin + "/direction");
    }
    assertThat(Sketches.of(untold).facing()).isEmpty();
  }

  @Test
  void what_is_not_told_of_bars_and_pins_is_a_usual_range() {
    FixatorSketch usual =
        sketch(
            FIXED
                .without(IT + "/barDistanceMm")
                .without(IT + "/barMm")
                .without(IT + "/bars")
                .without(IT + "/pins/0/diameterMm"));
    assertThat(usual.bars()).isEqualTo(1);
    assertThat(usual.distance().assumed()).isTrue();
    assertThat(usual.barDiameter().assumed()).isTrue();
    assertThat(usual.pins().get(0).diameter().numbers()).isEqualTo("5–6");
  }

  @Test
  void a_pin_that_turned_in_the_bone_holds_nothing_and_one_that_loosened_later_held_at_first() {
    assertThat(sketch(FIXED.at(IT + "/pins/0", "{state: 'stripped'}")).pins()).hasSize(5);
    assertThat(sketch(FIXED.at(IT + "/pins/0", "{state: 'loose'}")).pins()).hasSize(6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"frame", "pins"})
  void it_is_asked_for_what_has_no_usual_range(String field) {
    assertThat(Taken.of("modelled-line", FIXED.without(IT + "/" + field)))
        .isEqualTo("unknown, ask op-1/fixation/f/" + field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{frame: 'hybrid'}|a ring or hybrid fixator is not modelled",
        "{bars: 3}|a fixator with more than two bars is not modelled"
      })
  void it_is_outside_the_model_with(String patch, String why) {
    assertThat(Taken.of("modelled-line", FIXED.at(IT, patch))).isEqualTo("none: " + why);
  }

  @Test
  void it_is_outside_the_model_with_pins_in_two_planes() {
    assertThat(Taken.of("modelled-line", FIXED.at(IT + "/pins/2", "{direction: 'lateral'}")))
        .isEqualTo("none: a fixator with pins in more than one plane is not modelled");
  }

  @Test
  void has_strain_and_stress_in_its_pins_but_no_life() {
    assertThat(samples("gap-strain", FIXED)).allMatch(strain -> strain > 0);
    assertThat(samples("pin-stress-range", FIXED)).allMatch(stress -> stress > 0);
    String none = "none: neither plate nor nail holds the bone";
    assertThat(Taken.of("metal-life-over-union", FIXED)).isEqualTo(none);
    assertThat(Taken.of("endurance-used", FIXED)).isEqualTo(none);
    assertThat(Taken.of("hold-out-share", FIXED))
        .isEqualTo("none: an external fixator holds the bone");
  }

  @Test
  void pressed_its_pins_bear_less_the_nearer_its_bars_stand_under_every_set() {
    CaseText pressed =
        FIXED.at(
            "",
            "{loads: [{activity: 'standing', pressN: 20, bendingNm: 0, torsionNm: 0,"
                + " source: 'invented'}]}");
    List<Double> far = samples("pin-stress-range", pressed.at(IT, "{barDistanceMm: 80}"));
    List<Double> near = samples("pin-stress-range", pressed.at(IT, "{barDistanceMm: 30}"));
    for (int i = 0; i < far.size(); i++) {
      assertThat(near.get(i)).isLessThan(far.get(i));
    }
  }

  @Test
  void a_plate_beside_it_has_no_stress_in_pins_where_it_is_alone() {
    assertThat(Taken.of("pin-stress-range", Sketches.bridged()))
        .isEqualTo("none: no external fixator holds the bone");
  }
}
