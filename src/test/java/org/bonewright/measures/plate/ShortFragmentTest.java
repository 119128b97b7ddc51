package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** A line from 269 to 271 mm in a tibia of 360 mm, 24 mm wide: 89 mm are left beyond it. */
class ShortFragmentTest {

  private static final String SHAFT = "short-fragment-shaft";
  private static final String ANSWER = "short-fragment-answer";

  private static CaseText low(CaseText text) {
    return text.at(
            "/bone",
            "{sections: [{atMm: 60, outerMm: 24, canalMm: 10}, {atMm: 320, outerMm: 24, canalMm: 10}]}")
        .at("/injury", "{zone: {fromMm: 269, toMm: 271}}");
  }

  private static CaseText fixed(String fixation) {
    return low(CaseText.plated()).at("/operations/0", "{fixation: [" + fixation + "]}");
  }

  @Test
  void the_shaft_ends_at_the_usual_metaphysis() {
    // 89 less 45 to 55, by 24
    assertThat(Taken.of(SHAFT, low(CaseText.plated())))
        .isEqualTo("1.417–1.833 assumed, ask bone/metaphysealWidthMm");
  }

  @Test
  void a_metaphysis_is_as_long_as_it_is_wide() {
    // (89 - 41) / 24
    assertThat(Taken.of(SHAFT, low(CaseText.plated()).at("/bone", "{metaphysealWidthMm: 41}")))
        .isEqualTo("2 assumed");
  }

  @Test
  void levels_may_be_read_from_another_landmark() {
    // read from 20 mm below the plateau: the bone ends at 340, 69 beyond the line, less 41
    CaseText text =
        low(CaseText.plated()).at("/bone", "{metaphysealWidthMm: 41, landmarkOffsetMm: 20}");
    assertThat(Taken.of(SHAFT, text)).isEqualTo("1.167 assumed");
  }

  @Test
  void where_the_zone_lies_is_asked_for() {
    assertThat(Taken.of(SHAFT, CaseText.plated().at("/injury", "{zone: null}")))
        .isEqualTo("unknown, ask injury/zone");
  }

  @Test
  void three_locking_screws_hold_it() {
    String plate =
        "{id: 'plate-1', kind: 'plate', place: {zoneBetweenHoles: [5, 6]}, screws:"
            + " [{at: [1, 3, 5], type: 'cortical'}, {at: %s, type: '%s'}]}";
    assertThat(Taken.of(ANSWER, fixed(plate.formatted("[6, 8, 10]", "locking"))))
        .isEqualTo("yes fact");
    assertThat(Taken.of(ANSWER, fixed(plate.formatted("[6, 8]", "locking")))).isEqualTo("no fact");
    assertThat(Taken.of(ANSWER, fixed(plate.formatted("[6, 8, 10]", "cortical"))))
        .isEqualTo("no fact");
    assertThat(Taken.of(ANSWER, fixed("{id: 'plate-1', kind: 'plate'}")))
        .isEqualTo("no or yes fact, ask op-1/fixation/plate-1/screws");
  }

  @Test
  void screws_of_two_plates_hold_it() {
    String plate =
        "{id: 'plate-%d', kind: 'plate', place: {zoneBetweenHoles: [2, 3]}, screws:"
            + " [{at: [1, 4], type: 'cortical'}]}";
    assertThat(Taken.of(ANSWER, fixed(plate.formatted(1) + ", " + plate.formatted(2))))
        .isEqualTo("yes fact");
  }

  @Test
  void two_bolts_in_two_planes_hold_it() {
    String nail =
        "{id: 'nail-1', kind: 'nail', bolts: [{end: 'far', plane: 'medial'}, {end: 'far'%s}]}";
    assertThat(Taken.of(ANSWER, fixed(nail.formatted(", plane: 'anterior'"))))
        .isEqualTo("yes fact");
    assertThat(Taken.of(ANSWER, fixed(nail.formatted(", plane: 'lateral'")))).isEqualTo("no fact");
    assertThat(Taken.of(ANSWER, fixed(nail.formatted(""))))
        .isEqualTo("no or yes fact, ask op-1/fixation/nail-1/bolts");
  }

  @Test
  void a_ring_holds_it_and_a_one_sided_frame_does_not() {
    String fixator = "{id: 'fixator-1', kind: 'external-fixator'%s}";
    assertThat(Taken.of(ANSWER, fixed(fixator.formatted(", frame: 'ring'")))).isEqualTo("yes fact");
    assertThat(Taken.of(ANSWER, fixed(fixator.formatted(", frame: 'unilateral'"))))
        .isEqualTo("no fact");
    assertThat(Taken.of(ANSWER, fixed(fixator.formatted(""))))
        .isEqualTo("no or yes fact, ask op-1/fixation/fixator-1/frame");
  }

  @Test
  void nothing_put_in_is_a_word_of_its_own() {
    assertThat(Taken.of(ANSWER, fixed(""))).isEqualTo("no-implant fact");
    assertThat(Taken.of(ANSWER, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
