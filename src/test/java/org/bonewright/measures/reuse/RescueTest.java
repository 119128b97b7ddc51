package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class RescueTest {

  private static CaseText screw(String more) {
    return Revised.same()
        .at(Revised.PLATE, "{screws: [{at: [1], type: 'cortical', cortices: 2" + more + "}]}");
  }

  @Test
  void a_thicker_screw_in_the_old_hole_is_a_rescue() {
    CaseText text = screw(", diameterMm: 5.5");
    assertThat(Taken.of("rescue-screw", text)).isEqualTo("yes fact");
    assertThat(Taken.of("rescue-step", text)).isEqualTo("1 assumed");
    // 5.5 / 24, and (24 - 10) / 2
    assertThat(Taken.of("rescue-ratio", text)).isEqualTo("0.229 fact");
    assertThat(Taken.of("rescue-cortex", text)).isEqualTo("7 fact");
  }

  @Test
  void of_two_the_wider_hole_and_the_thinner_cortex_count() {
    // 24 mm wide with a cortex of 7 at 108, 30 mm with one of 4 at 252
    CaseText text =
        Revised.same()
            .with(
                "{bone: {sections: [{atMm: 108, outerMm: 24, canalMm: 10},"
                    + " {atMm: 252, outerMm: 30, canalMm: 22}]}}")
            .at(
                Revised.PLATE,
                "{screws: [{at: [1, 10], type: 'cortical', cortices: 2, diameterMm: 5.5}]}");
    // 5.5 / 24 and 5.5 / 30
    assertThat(Taken.of("rescue-ratio", text)).isEqualTo("0.229 fact");
    assertThat(Taken.of("rescue-cortex", text)).isEqualTo("4 fact");
  }

  @Test
  void a_screw_just_as_thick_as_the_one_before_at_the_least_may_be_one() {
    String asked = "no or yes fact, ask plan-a/stage-1/fixation/plate-1/screws/track";
    assertThat(Taken.of("rescue-screw", screw(", diameterMm: {min: 4.5, max: 5}")))
        .isEqualTo(asked);
    assertThat(Taken.of("rescue-screw", screw(", diameterMm: {min: 4, max: 4.5}")))
        .isEqualTo("no fact");
    assertThat(Taken.of("rescue-screw", screw(", diameterMm: {min: 4.6, max: 5}")))
        .isEqualTo("yes fact");
  }

  @Test
  void a_screw_that_may_meet_the_old_hole_may_be_one() {
    CaseText text =
        screw(", diameterMm: 5.5")
            .at(Revised.PLATE, "{place: {firstHoleMm: {min: 106, max: 114}}}");
    assertThat(Taken.of("rescue-screw", text)).startsWith("no or yes fact");
  }

  @Test
  void a_hole_whose_level_is_not_exact_may_have_any_cortex_along_it() {
    CaseText text =
        screw(", diameterMm: 5.5, track: 'old-hole-larger'")
            .with(
                "{bone: {sections: [{atMm: 60, outerMm: 24, canalMm: 10},"
                    + " {atMm: 300, outerMm: 24, canalMm: 18}]}}")
            .at(Revised.PLATE, "{place: {firstHoleMm: {min: 102, max: 114}}}");
    // 7 mm at 60 and 3 at 300: 7 - 42 / 60 at 102, 7 - 54 / 60 at 114
    assertThat(Taken.of("rescue-cortex", text)).isEqualTo("6.1–6.3 fact, ask bone/sections");
  }

  @Test
  void the_same_screw_again_is_none() {
    assertThat(Taken.of("rescue-screw", screw(""))).isEqualTo("no fact");
    assertThat(Taken.of("rescue-step", screw("")))
        .isEqualTo("none: no old hole used for a thicker screw");
    assertThat(Taken.of("rescue-screw", Revised.turned())).isEqualTo("no fact");
  }

  @Test
  void cement_or_a_nut_is_another_way() {
    assertThat(Taken.of("rescue-screw", screw(", diameterMm: 5.5, augmentation: 'cement'")))
        .isEqualTo("no fact");
  }

  @Test
  void a_screw_between_thinner_and_thicker_may_be_one() {
    assertThat(Taken.of("rescue-screw", screw(", diameterMm: {min: 4, max: 5}")))
        .isEqualTo("no or yes fact, ask plan-a/stage-1/fixation/plate-1/screws/track");
  }

  @Test
  void what_was_there_before_is_asked_for() {
    CaseText text =
        Revised.unmapped()
            .at(
                Revised.PLATE,
                "{screws: [{at: [1], type: 'cortical', diameterMm: 5.5, track: 'old-hole-larger'}]}");
    assertThat(Taken.of("rescue-screw", text)).isEqualTo("yes fact");
    assertThat(Taken.of("rescue-step", text))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/screws/track");
  }

  @Test
  void without_a_new_plate_there_is_none() {
    assertThat(Taken.of("rescue-screw", Revised.takenOut())).isEqualTo("no fact");
    assertThat(Taken.of("rescue-ratio", Revised.takenOut())).isEqualTo("none: no new plate");
  }
}
