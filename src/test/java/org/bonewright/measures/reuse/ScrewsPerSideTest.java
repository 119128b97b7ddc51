package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class ScrewsPerSideTest {

  private static final String FRESH = "fresh-screws-weaker-side";
  private static final String CLEAR = "clear-screws-weaker-side";
  private static final String NEAR = "screws-near-old-holes";

  @Test
  void a_quarter_turn_round_the_bone_is_fresh_bone() {
    // 24 x sin 45 = 17.0 between middles, less 4.5: 12.5 of bone
    assertThat(Taken.of(FRESH, Revised.turned())).isEqualTo("3 fact");
    assertThat(Taken.of(NEAR, Revised.turned())).isEqualTo("0 fact");
  }

  @Test
  void less_than_a_diameter_of_bone_is_fresh_but_close() {
    // 8 between middles, less 4.5: 3.5 of bone
    assertThat(Taken.of(FRESH, Revised.shifted(8))).isEqualTo("3 fact");
    assertThat(Taken.of(CLEAR, Revised.shifted(8))).isEqualTo("0 fact");
    assertThat(Taken.of(NEAR, Revised.shifted(8))).isEqualTo("3 fact");
  }

  @Test
  void an_overlap_is_close_and_not_fresh() {
    assertThat(Taken.of(FRESH, Revised.shifted(3))).isEqualTo("0 fact");
    assertThat(Taken.of(NEAR, Revised.shifted(3))).isEqualTo("3 fact");
  }

  @Test
  void both_sides_are_told() {
    assertThat(working(FRESH, Revised.turned())).isEqualTo("near side 3, far side 3");
    assertThat(working(FRESH, Revised.unmapped())).isEqualTo("near side 0 to 3, far side 0 to 3");
  }

  private static String working(String measure, CaseText text) {
    return Taken.reading(measure, Taken.subject(text.file(), "plan-a")).working();
  }

  @Test
  void a_far_cortex_that_an_old_hole_took_is_no_fresh_bone() {
    // old screws 3 mm beside the new ones, entered medially through one cortex; the new plate
    // lies laterally, so that its screws meet them in their far cortex
    CaseText text =
        Revised.shifted(3)
            .at(
                Revised.OLD_PLATE,
                "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 1}]}")
            .at(Revised.PLATE, "{surface: 'lateral'}");
    assertThat(Taken.of(FRESH, text)).isEqualTo("0 fact");
  }

  @Test
  void a_plate_that_stays_has_no_new_screws() {
    CaseText kept = Revised.same().at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(Taken.of(FRESH, kept)).isEqualTo("none: no new plate");
  }

  @Test
  void a_stripped_screw_close_to_an_old_hole_still_counts_as_close() {
    CaseText text =
        Revised.shifted(8)
            .at(
                Revised.PLATE,
                "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2, state:"
                    + " 'stripped'}]}");
    assertThat(Taken.of(NEAR, text)).isEqualTo("3 fact");
    assertThat(Taken.of(CLEAR, text)).isEqualTo("0 fact");
  }

  @Test
  void a_screw_in_the_old_hole_again_is_neither() {
    assertThat(Taken.of(FRESH, Revised.same())).isEqualTo("0 fact");
    assertThat(Taken.of(NEAR, Revised.same())).isEqualTo("0 fact");
  }

  @Test
  void the_weaker_side_counts_for_fresh_and_the_worse_for_close_screws() {
    CaseText text =
        Revised.turned()
            .at(Revised.PLATE, "{screws: [{at: [1, 2, 3, 6], type: 'cortical', cortices: 2}]}");
    assertThat(Taken.of(FRESH, text)).isEqualTo("1 fact");
    CaseText close =
        Revised.shifted(8)
            .at(Revised.PLATE, "{screws: [{at: [1, 3, 6], type: 'cortical', cortices: 2}]}");
    assertThat(Taken.of(NEAR, close)).isEqualTo("2 fact");
  }

  @Test
  void a_screw_that_stripped_is_not_fresh_hold() {
    CaseText text =
        Revised.turned()
            .at(
                Revised.PLATE,
                "{screws: [{at: [1, 3, 5, 6, 8], type: 'cortical'},"
                    + " {at: [10], type: 'cortical', state: 'stripped'}]}");
    assertThat(Taken.of(FRESH, text)).isEqualTo("2 fact");
  }

  @Test
  void an_old_plate_of_unknown_level_leaves_it_open() {
    assertThat(Taken.of(FRESH, Revised.unmapped()))
        .isEqualTo("0–3 fact, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(NEAR, Revised.unmapped()))
        .isEqualTo("0–3 fact, ask op-1/fixation/plate-1/place");
  }

  @Test
  void what_is_missing_of_the_new_plate_is_asked_for() {
    assertThat(Taken.of(FRESH, Revised.turned().at(Revised.PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/screws");
    assertThat(Taken.of(FRESH, Revised.takenOut())).isEqualTo("none: no new plate");
  }
}
