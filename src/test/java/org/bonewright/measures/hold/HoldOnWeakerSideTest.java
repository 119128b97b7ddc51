package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The zone lies between holes 5 and 6 of ten. */
class HoldOnWeakerSideTest {

  private static final String PLATE = "/operations/0/fixation/0";
  private static final String STAGE_PLATE = "/plans/0/stages/0/fixation/0";

  private static CaseText screws(String... rows) {
    return CaseText.plated().at(PLATE, "{screws: [" + String.join(", ", rows) + "]}");
  }

  private static String row(String holes, String type, String more) {
    return "{at: " + holes + ", type: '" + type + "'" + (more.isEmpty() ? "" : ", " + more) + "}";
  }

  @Nested
  class Cortices {

    @ParameterizedTest(name = "screws in {0} with {1}: {2}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            [1, 3, 5, 6, 8, 10]  | cortices: 2                      | 6 fact
            [1, 3, 5, 6, 8]      | cortices: 2                      | 4 fact
            [1, 3, 5, 6, 8, 10]  | cortices: 1                      | 3 fact
            [1, 3, 5]            | cortices: 2                      | 0 fact
            # a conventional screw is taken to cross both
            [1, 3, 5, 6, 8, 10]  | cortices: null                   | 6 assumed
            [1, 5, 6, 10]        | cortices: 2, state: 'stripped'   | 0 fact
            [1, 5, 6, 10]        | cortices: 2, track: 'old-hole'   | 0 fact
            [1, 5, 6, 10]        | cortices: 2, track: 'old-hole-larger' | 4 fact
            """)
    void are_added_up_on_the_weaker_side(String holes, String screw, String reads) {
      assertThat(Taken.of("cortices-weaker-side", screws(row(holes, "cortical", screw))))
          .isEqualTo(reads);
    }

    @Test
    void are_taken_as_the_record_numbers_them_where_it_names_no_hole() {
      CaseText numbered =
          CaseText.plated()
              .at(
                  PLATE,
                  "{screws: null, family: 'small-fragment', fewestCortices: {min: 0, max: 3}}");
      assertThat(Taken.of("cortices-weaker-side", numbered)).startsWith("0–3 fact");
      assertThat(Taken.of("conventional-side", numbered)).isEqualTo("yes fact");
      assertThat(Taken.of("locked-only-side", numbered)).isEqualTo("no fact");
    }

    @Test
    void numbered_in_a_plate_that_may_hold_locking_screws_stay_unknown() {
      CaseText numbered =
          CaseText.plated()
              .at(PLATE, "{screws: null, family: 'small-fragment-locking', fewestCortices: 6}");
      assertThat(Taken.of("cortices-weaker-side", numbered)).startsWith("unknown");
      assertThat(Taken.of("conventional-side", numbered)).startsWith("unknown");
    }

    @Test
    void of_locking_screws_count_beside_conventional_ones() {
      // near 2 + 2, far 2 + 2 + 2
      CaseText text =
          screws(
              row("[1, 6, 8]", "cortical", "cortices: 2"),
              row("[5, 10]", "locking", "cortices: 2"));
      assertThat(Taken.of("cortices-weaker-side", text)).isEqualTo("4 fact");
    }

    @Test
    void of_a_side_held_by_locking_screws_alone_are_left_to_the_other_measure() {
      CaseText oneSide =
          screws(
              row("[1, 3, 5]", "cortical", "cortices: 2"), row("[6, 8]", "locking", "cortices: 2"));
      CaseText both = screws(row("[1, 3, 5, 6, 8]", "locking", "cortices: 2"));
      assertThat(Taken.of("cortices-weaker-side", oneSide)).isEqualTo("6 fact");
      assertThat(Taken.of("cortices-weaker-side", both))
          .isEqualTo("none: every side is held by locking screws alone");
    }

    @Test
    void of_a_screw_that_falls_short_are_one() {
      // near 2 + 2 + 2, far 2 + 2 + 1
      CaseText text =
          screws(
              row("[1, 3, 5, 6, 8]", "cortical", "cortices: 2"),
              row("[10]", "cortical", "cortices: 2, tipBeyondMm: -0.5"));
      assertThat(Taken.of("cortices-weaker-side", text)).isEqualTo("5 fact");
    }

    @Test
    void of_a_locking_screw_may_be_one_or_two() {
      // near 2 + (1 to 2)
      CaseText text =
          screws(
              row("[1, 6, 8]", "cortical", "cortices: 2"), row("[5]", "locking", "cortices: null"));
      assertThat(Taken.of("cortices-weaker-side", text))
          .isEqualTo("3–4 assumed, ask op-1/fixation/plate-1/screws/cortices");
    }
  }

  @Nested
  class LockingScrews {

    private static CaseText locked(String cortices) {
      return screws(row("[1, 3, 5, 6, 8, 10]", "locking", "cortices: " + cortices));
    }

    @ParameterizedTest(name = "cortices {0}, cortex of {1} mm: {2}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            2     | 5   | 3 fact
            2     | 2.5 | 3 fact
            1     | 5   | 1.5 fact
            1     | 3.5 | 1.5 fact
            1     | 2.5 | 0 fact
            null  | 5   | 1.5–3 assumed, ask op-1/fixation/plate-1/screws/cortices
            null  | 2.5 | 0–3 assumed, ask op-1/fixation/plate-1/screws/cortices
            """)
    void with_a_single_cortex_count_half_or_in_poor_bone_nothing(
        String cortices, String cortex, String reads) {
      CaseText text =
          locked(cortices)
              .at("/bone", "{quality: [{method: 'cortical-thickness', value: " + cortex + "}]}");
      assertThat(Taken.of("locking-screws-weaker-side", text)).isEqualTo(reads);
    }

    @Test
    void with_a_single_cortex_need_the_grade_of_the_bone() {
      CaseText text = locked("1").at("/bone", "{quality: null}").at("/patient", "{ageYears: 70}");
      assertThat(Taken.of("locking-screws-weaker-side", text))
          .isEqualTo("0–1.5 assumed, ask bone/quality");
    }

    @ParameterizedTest(name = "cortex of {0} mm")
    @ValueSource(strings = {"5", "2.5"})
    void with_a_single_cortex_count_in_full_beside_a_nail(String cortex) {
      CaseText text =
          locked("1")
              .at("/bone", "{quality: [{method: 'cortical-thickness', value: " + cortex + "}]}");
      CaseText onNail = BesideNail.of(text);
      assertThat(Taken.of("locking-screws-weaker-side", onNail)).isEqualTo("3 fact");
      assertThat(Taken.of("locking-screws-each-side", onNail)).isEqualTo("3 fact");
    }

    @Test
    void on_each_side_count_beside_conventional_ones_too() {
      // near: hole 5 of three locks; far: holes 6 and 8
      CaseText text =
          screws(
              row("[1, 3, 10]", "cortical", "cortices: 2"),
              row("[5, 6, 8]", "locking", "cortices: 2"));
      assertThat(Taken.of("locking-screws-each-side", text)).isEqualTo("1 fact");
      assertThat(Taken.of("locking-screws-each-side", CaseText.plated())).isEqualTo("0 fact");
    }

    @Test
    void whose_tip_falls_short_hold_in_one_cortex_whatever_is_stated() {
      assertThat(Taken.of("locking-screws-weaker-side", locked("2, tipBeyondMm: -1")))
          .isEqualTo("1.5 fact");
      assertThat(Taken.of("locking-screws-weaker-side", locked("null, tipBeyondMm: 1")))
          .isEqualTo("3 fact");
      assertThat(
              Taken.of(
                  "locking-screws-weaker-side", locked("null, tipBeyondMm: {min: -1, max: 1}")))
          .isEqualTo("1.5–3 fact, ask op-1/fixation/plate-1/screws/cortices");
    }

    @Test
    void are_not_counted_beside_a_conventional_screw() {
      assertThat(Taken.of("locking-screws-weaker-side", CaseText.plated()))
          .isEqualTo("none: no side is held by locking screws alone");
      CaseText mixed =
          screws(
              row("[1, 3]", "locking", "cortices: 2"),
              row("[6, 8, 10]", "locking", "cortices: 2"),
              row("[5]", "cortical", "cortices: 2"));
      assertThat(Taken.of("locking-screws-weaker-side", mixed)).isEqualTo("3 fact");
    }
  }

  /** The plan does the same as the operation that failed, unless changed. */
  @Nested
  class OldTracks {

    private static final String ASK =
        "0–6 assumed, ask plan-a/stage-1/fixation/plate-1/screws/track";

    private static CaseText plan(String patch) {
      return CaseText.plated().redone("no-union-metal-intact").at(STAGE_PLATE, patch);
    }

    private static String cortices(CaseText text) {
      return Taken.of("cortices-weaker-side", text);
    }

    @Test
    void screws_on_the_same_surface_may_meet_them() {
      assertThat(cortices(plan("{}"))).isEqualTo(ASK);
    }

    @Test
    void screws_at_a_right_angle_keep_clear() {
      // openings 24 x sin 45° = 17 mm apart, the screws 4.5 mm thick
      assertThat(cortices(plan("{surface: 'anterior'}"))).isEqualTo("6 fact");
    }

    @Test
    void screws_from_the_opposite_surface_may_meet_them() {
      assertThat(cortices(plan("{surface: 'lateral'}"))).isEqualTo(ASK);
    }

    @Test
    void screws_whose_surface_is_not_stated_may_meet_them() {
      assertThat(cortices(plan("{surface: null}"))).isEqualTo(ASK);
    }

    @Test
    void levels_tell_screws_on_one_surface_apart() {
      // 8 mm farther on: half a spacing from every old hole
      CaseText text =
          plan("{place: {zoneBetweenHoles: [5, 6], firstHoleMm: 116}}")
              .at(PLATE, "{place: {firstHoleMm: 108}}");
      assertThat(cortices(text)).isEqualTo("6 fact");
    }

    @Test
    void what_the_file_says_of_the_track_counts_first() {
      CaseText text =
          plan(
              "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2, track:"
                  + " 'fresh'}]}");
      assertThat(cortices(text)).isEqualTo("6 fact");
    }

    @ParameterizedTest(name = "earlier plate with {0}")
    @ValueSource(strings = {"{place: null}", "{screws: null}", "{family: null, spacingMm: null}"})
    void screws_at_places_that_are_not_recorded_may_be_met_from_any_surface(String earlier) {
      assertThat(cortices(plan("{surface: 'anterior'}").at(PLATE, earlier))).isEqualTo(ASK);
    }

    @Test
    void an_earlier_operation_that_does_not_say_what_it_put_in_leaves_it_open() {
      CaseText text = plan("{surface: 'anterior'}").at("/operations/0", "{fixation: null}");
      assertThat(cortices(text)).isEqualTo(ASK);
    }

    @Test
    void an_earlier_operation_that_put_nothing_in_left_no_track() {
      assertThat(cortices(plan("{}").at("/operations/0", "{fixation: []}"))).isEqualTo("6 fact");
    }

    @Test
    void a_plate_that_was_left_does_not_lie_in_its_own_tracks() {
      CaseText text =
          CaseText.plated()
              .redone("no-union-metal-intact")
              .at("/plans/0/stages/0", "{fixation: [], removed: []}");
      assertThat(cortices(text)).isEqualTo("6 fact");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"cortices-weaker-side", "locking-screws-weaker-side", "locking-screws-each-side"})
  void what_is_missing_is_asked_for(String measure) {
    assertThat(Taken.of(measure, CaseText.plated().at(PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(measure, CaseText.plated().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(measure, CaseText.nailed())).isEqualTo("none: no plate in place");
  }
}
