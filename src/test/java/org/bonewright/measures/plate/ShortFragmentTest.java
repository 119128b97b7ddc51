package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** 99 mm are left on the shorter side of a bone of 300 mm, less the usual metaphysis, by 24. */
  @ParameterizedTest(name = "{0}: near {1}, far {2}")
  @CsvSource({
    "humerus, 1.833–2.25, 1.208–1.833",
    "femur, 0–0.375, 0.375–1",
    "tibia, 0.583–1.208, 1.833–2.25",
    "radius, 2.875–3.292, 2.667–2.958",
    "ulna, 2.25–2.667, 3.083–3.375",
    "clavicle, 2.958–3.292, 2.958–3.292"
  })
  void each_end_of_each_bone_has_its_own_metaphysis(String bone, String near, String far) {
    CaseText text = low(CaseText.plated()).at("/bone", "{name: '" + bone + "', lengthMm: 300}");
    String asked = " assumed, ask bone/metaphysealWidthMm";
    assertThat(Taken.of(SHAFT, text.at("/injury", "{zone: {fromMm: 99, toMm: 101}}")))
        .isEqualTo(near + asked);
    assertThat(Taken.of(SHAFT, text.at("/injury", "{zone: {fromMm: 199, toMm: 201}}")))
        .isEqualTo(far + asked);
  }

  @Test
  void of_two_fragments_of_one_length_either_may_be_the_shorter() {
    String plate =
        "{id: 'plate-1', kind: 'plate', place: {zoneBetweenHoles: [5, 6]}, screws:"
            + " [{at: [1, 3, 5], type: 'cortical'}, {at: [6, 8, 10], type: 'locking'}]}";
    CaseText text = fixed(plate).at("/injury", "{zone: {fromMm: 179, toMm: 181}}");
    assertThat(Taken.of(ANSWER, text)).isEqualTo("no or yes fact, ask injury/zone");
    assertThat(working(text)).isEqualTo("shorter side: far or near");
    assertThat(working(fixed(plate))).isEqualTo("shorter side: far");
  }

  private static String working(CaseText text) {
    return Taken.reading(ANSWER, Taken.subject(text.file(), "op-1")).working();
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
  void a_stripped_locking_screw_does_not_count() {
    String plate =
        "{id: 'plate-1', kind: 'plate', place: {zoneBetweenHoles: [5, 6]}, screws:"
            + " [{at: [6, 8], type: 'locking'}, {at: [10], type: 'locking', state: '%s'}]}";
    assertThat(Taken.of(ANSWER, fixed(plate.formatted("sound")))).isEqualTo("yes fact");
    assertThat(Taken.of(ANSWER, fixed(plate.formatted("stripped")))).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "bolts at 0 and {0} degrees: {1}")
  @CsvSource({"29, no fact", "30, yes fact", "150, yes fact", "151, no fact"})
  void two_planes_are_thirty_degrees_apart_or_more(int plane, String reads) {
    String nail =
        "{id: 'nail-1', kind: 'nail', bolts: [{end: 'far', plane: 0}, {end: 'far', plane: %d}]}";
    assertThat(Taken.of(ANSWER, fixed(nail.formatted(plane)))).isEqualTo(reads);
  }

  @Test
  void bolts_of_the_other_end_do_not_hold_it() {
    String nail =
        "{id: 'nail-1', kind: 'nail', bolts: [{end: 'near', plane: 'medial'}, {end: 'near', plane:"
            + " 'anterior'}, {end: 'far', plane: 'medial'}]}";
    assertThat(Taken.of(ANSWER, fixed(nail))).isEqualTo("no fact");
  }

  @Test
  void what_an_earlier_operation_left_in_may_hold_it() {
    CaseText text =
        low(CaseText.bare())
            .at(
                "",
                "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', removed: [], fixation:"
                    + " [{id: 'fixator-1', kind: 'external-fixator', frame: 'unilateral'}]}]}]}");
    assertThat(Taken.of(ANSWER, text)).startsWith("no or yes fact, ask plan-a/stage-1/fixation");
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
    assertThat(Taken.of(ANSWER, fixed("{id: 'lag-1', kind: 'lag-screw'}")))
        .isEqualTo("no-implant fact");
    assertThat(Taken.of(ANSWER, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
