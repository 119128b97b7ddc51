package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.MissingFact;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A transverse tibia of which reduction and compression are told. */
class LineMakerTest {

  private static CaseText reduced(String near, String far, String contact, String method) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{reduction: {gapNearMm: "
                + near
                + ", gapFarMm: "
                + far
                + ", contactPercent: "
                + contact
                + "}, compression: {method: '"
                + method
                + "'}}");
  }

  private static LineSketch line(CaseText text) {
    return new LineMaker(Sketches.scene(text)).line().orElseThrow();
  }

  private static List<String> asks(CaseText text) {
    LineMaker maker = new LineMaker(Sketches.scene(text));
    assertThat(maker.line()).isEmpty();
    return maker.missing().stream().map(MissingFact::field).toList();
  }

  private static void spans(Dimension range, double min, double max) {
    assertThat(List.of(range.min(), range.max())).containsExactly(min, max);
  }

  @ParameterizedTest(name = "{0} and {1} mm, {2} % touch, {3}: closed {4}, {5} to {6} mm")
  @CsvSource({
    "0,    0,    100, none,             true,  0,   0",
    "0.09, 0.05, 0,   none,             true,  0,   0",
    // one side touches, but nothing presses and less than half of the ring touches
    "0,    1,    49,  none,             false, 0.1, 1",
    "1,    0,    49,  none,             false, 0.1, 1",
    "0,    1,    50,  none,             true,  0,   0",
    // a clamp is taken off again
    "0,    1,    49,  clamp,            false, 0.1, 1",
    "0,    1,    0,   eccentric-screws, true,  0,   0",
    "0,    1,    0,   tension-device,   true,  0,   0",
    "1,    0,    0,   lag-screw,        true,  0,   0",
    // neither side touches: pressing and contact elsewhere do not close it
    "0.1,  1,    90,  tension-device,   false, 0.1, 1",
    "2,    2,    0,   none,             false, 2,   2",
    "1,    3,    0,   eccentric-screws, false, 1,   3"
  })
  void closes_where_it_touches_all_round_or_was_pressed_or_touches_over_half(
      String near,
      String far,
      String contact,
      String method,
      boolean closed,
      double min,
      double max) {
    LineSketch line = line(reduced(near, far, contact, method));
    assertThat(line.closed()).isEqualTo(closed);
    spans(line.gap(), min, max);
    spans(line.strained(), min, max);
  }

  @Test
  void keeps_a_gap_that_is_told_as_a_range() {
    LineSketch line = line(reduced("{min: 1, max: 2}", "{min: 2, max: 4}", "0", "none"));
    spans(line.gap(), 1, 4);
    assertThat(line.closed()).isFalse();
  }

  @Test
  void does_not_count_as_touching_what_only_may_touch() {
    assertThat(line(reduced("{min: 0, max: 1}", "2", "90", "tension-device")).closed()).isFalse();
    assertThat(line(reduced("0", "2", "{min: 40, max: 90}", "none")).closed()).isFalse();
  }

  @Nested
  class A_zone_in_pieces {

    private static CaseText zone(String pattern, String method) {
      return reduced("1", "1", "0", method)
          .at("/injury", "{pattern: '" + pattern + "', zone: {fromMm: 160, toMm: 200}}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"multifragmentary", "segmental-defect"})
    void is_a_gap_whose_parts_add_up_to_a_quarter_or_more(String pattern) {
      LineSketch line = line(zone(pattern, "none"));
      assertThat(line.closed()).isFalse();
      spans(line.gap(), 40, 40);
      spans(line.strained(), 10, 40);
    }

    @Test
    void that_was_pressed_together_is_a_line() {
      LineSketch line = line(zone("multifragmentary", "lag-screw"));
      spans(line.gap(), 1, 1);
    }

    @Test
    void fits_between_the_holes_either_side_where_its_length_is_not_told() {
      LineSketch line = line(zone("multifragmentary", "none").at("/injury", "{zone: null}"));
      // the holes 5 and 6 are 16 mm apart
      spans(line.gap(), 0.1, 16);
      assertThat(line.gap().assumed()).isTrue();
    }

    @Test
    void asks_for_its_length_where_no_holes_tell_it() {
      CaseText text = zone("multifragmentary", "none").at("/injury", "{zone: null}");
      assertThat(asks(text.without("/operations/0/fixation/0/place")))
          .containsExactly("injury/zone");
    }
  }

  @Nested
  class Where_it_is_not_told {

    @ParameterizedTest
    @ValueSource(strings = {"gapNearMm", "gapFarMm"})
    void how_wide_the_gap_is_that_is_asked(String field) {
      CaseText text = reduced("1", "1", "0", "none").without("/operations/0/reduction/" + field);
      assertThat(asks(text)).containsExactly("op-1/reduction/" + field);
    }

    @Test
    void how_wide_both_gaps_are_both_are_asked() {
      CaseText text = CaseText.plated().without("/operations/0/reduction");
      assertThat(asks(text)).containsExactly("op-1/reduction/gapNearMm", "op-1/reduction/gapFarMm");
    }

    @Test
    void what_kind_of_fracture_it_is_that_is_asked() {
      assertThat(asks(CaseText.plated().without("/injury/pattern")))
          .containsExactly("injury/pattern");
    }
  }

  @Nested
  class What_presses_it {

    private static CaseText closed(String compression) {
      return CaseText.plated()
          .at("/operations/0", "{compression: null}")
          .at("/operations/0", "{compression: " + compression + "}");
    }

    @ParameterizedTest(name = "{0}: {1} to {2} N")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            {method: 'eccentric-screws'}             | 300  | 1200
            {method: 'eccentric-screws', screws: 1}  | 300  | 600
            {method: 'eccentric-screws', screws: 2}  | 600  | 1200
            {method: 'eccentric-screws', screws: 4}  | 600  | 1200
            {method: 'tension-device'}               | 1000 | 2000
            {method: 'lag-screw'}                    | 100  | 3000
            {method: 'none'}                         | 0    | 0
            """)
    void has_the_force_of_its_method(String compression, double min, double max) {
      spans(line(closed(compression)).pressed(), min, max);
    }

    @Test
    void may_be_anything_but_a_lag_screw_where_the_method_is_not_told_and_no_such_screw_is_there() {
      CaseText text =
          CaseText.plated()
              .at("/operations/0", "{compression: null, reduction: {gapFarMm: 0}}")
              .without("/operations/0/concept");
      spans(line(text).pressed(), 0, 2000);
    }

    @Test
    void is_nothing_in_an_open_gap() {
      spans(line(reduced("2", "2", "0", "tension-device")).pressed(), 0, 0);
    }

    @Test
    void acts_on_the_axis_for_a_lag_screw_alone() {
      assertThat(line(closed("{method: 'lag-screw'}")).central()).isTrue();
      assertThat(line(closed("{method: 'eccentric-screws'}")).central()).isFalse();
      assertThat(line(closed("{method: 'tension-device'}")).central()).isFalse();
    }

    @ParameterizedTest(name = "bent beforehand: {0}: {1} to {2}")
    @CsvSource({"yes, 0, 0", "no, 0.8, 1", "unknown, 0, 1"})
    void lies_under_a_plate_that_was_not_bent(String prebent, double min, double max) {
      spans(
          line(closed("{method: 'tension-device', prebent: '" + prebent + "'}")).towardsPlate(),
          min,
          max);
    }
  }
}
