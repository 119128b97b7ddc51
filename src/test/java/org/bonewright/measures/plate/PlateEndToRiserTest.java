package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/**
 * The plate lies from 100 to 260 mm; its first holes at 108, 140 and 172 mm; the bone is 24 wide.
 */
class PlateEndToRiserTest {

  private static final String ID = "plate-end-to-riser";
  private static final String FIXED = "riser-overlap-fixed";
  private static final String PLATE =
      "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow', holes: 10, lengthMm: 160,"
          + " place: {zoneBetweenHoles: [5, 6], firstHoleMm: 108},"
          + " screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical'}]}";

  private static CaseText with(String... more) {
    return CaseText.plated()
        .at("/bone", "{sections: [{atMm: 60, outerMm: 24}, {atMm: 320, outerMm: 24}]}")
        .at("/operations/0", "{fixation: [" + PLATE + String.join("", more) + "]}");
  }

  private static CaseText beside(int from, int to) {
    return with()
        .at("/bone", "{otherImplants: [{what: 'stem', fromMm: %d, toMm: %d}]}".formatted(from, to));
  }

  @Test
  void a_gap_counts_from_end_to_end() {
    assertThat(Taken.of(ID, beside(284, 350))).isEqualTo("1 assumed");
    assertThat(Taken.of(ID, beside(0, 40))).isEqualTo("2.5 assumed");
    assertThat(Taken.of(FIXED, beside(284, 350))).isEqualTo("none: no overlap with other metal");
  }

  @Test
  void an_overlap_counts_by_its_length() {
    // 172 - 100
    assertThat(Taken.of(ID, beside(0, 172))).isEqualTo("3 assumed");
    assertThat(Taken.of(FIXED, beside(0, 172))).isEqualTo("yes fact");
  }

  @Test
  void an_overlap_without_screw_or_cerclage_is_not_fixed() {
    assertThat(Taken.of(FIXED, beside(0, 105))).isEqualTo("no fact");
    CaseText tied =
        with(", {id: 'cable-1', kind: 'cerclage', atMm: [103]}")
            .at("/bone", "{otherImplants: [{what: 'stem', fromMm: 0, toMm: 105}]}");
    assertThat(Taken.of(FIXED, tied)).isEqualTo("yes fact");
  }

  @Test
  void an_overlap_beyond_the_far_end_counts_by_its_length() {
    // 260 - 200
    assertThat(Taken.of(ID, beside(200, 350))).isEqualTo("2.5 assumed");
    assertThat(Taken.of(FIXED, beside(200, 350))).isEqualTo("yes fact");
    assertThat(Taken.of(FIXED, beside(255, 350))).isEqualTo("no fact");
  }

  @Test
  void ends_that_touch_lie_no_diameter_apart_and_are_held_by_nothing() {
    assertThat(Taken.of(ID, beside(260, 350))).isEqualTo("0 assumed");
    assertThat(Taken.of(ID, beside(0, 100))).isEqualTo("0 assumed");
    assertThat(Taken.of(FIXED, beside(260, 350))).isEqualTo("no fact");
  }

  @Test
  void an_end_that_may_lie_on_either_side_of_the_plates_end_gives_a_range() {
    CaseText text = ranged("{min: 255, max: 270}", "350");
    // 5 mm of overlap to 10 mm of gap
    assertThat(Taken.of(ID, text)).startsWith("0–0.417 assumed");
    assertThat(Taken.of(FIXED, text)).startsWith("no or yes fact");
    // reaches 10 mm beyond the near end with 72 mm shared, or begins 10 mm within
    assertThat(Taken.of(ID, ranged("{min: 90, max: 110}", "172"))).startsWith("0–3 assumed");
  }

  private static CaseText ranged(String from, String to) {
    return with()
        .at("/bone", "{otherImplants: [{what: 'stem', fromMm: %s, toMm: %s}]}".formatted(from, to));
  }

  @Test
  void a_level_of_other_metal_that_is_a_range_is_asked_for() {
    assertThat(Taken.of(ID, ranged("{min: 284, max: 290}", "350"))).contains("bone/otherImplants");
    assertThat(Taken.of(ID, ranged("0", "{min: 30, max: 40}"))).contains("bone/otherImplants");
    // the nail makes it a range, not the stem, whose levels are exact
    CaseText exact =
        with(", {id: 'nail-1', kind: 'nail', entry: 'retrograde', lengthMm: 80}")
            .at("/bone", "{lengthMm: 394, otherImplants: [{what: 'stem', fromMm: 0, toMm: 10}]}");
    assertThat(Taken.of(ID, exact)).contains("nail-1").doesNotContain("otherImplants");
  }

  @Test
  void a_distance_is_counted_in_diameters_of_the_bone_at_that_end_of_the_plate() {
    String cone = "{sections: [{atMm: 100, outerMm: 20}, {atMm: 260, outerMm: 28}]}";
    assertThat(Taken.of(ID, beside(288, 350).at("/bone", cone))).isEqualTo("1 assumed");
    assertThat(Taken.of(ID, beside(0, 60).at("/bone", cone))).isEqualTo("2 assumed");
    // an overlap of 56 in diameters of 20 to 28
    assertThat(Taken.of(ID, beside(0, 156).at("/bone", cone))).startsWith("2–2.8 assumed");
  }

  @Test
  void a_cerclage_holds_the_plate_only_where_the_plate_lies() {
    String stem = "{otherImplants: [{what: 'stem', fromMm: 0, toMm: 105}]}";
    String cable = ", {id: 'cable-1', kind: 'cerclage', atMm: [%s]}";
    assertThat(Taken.of(FIXED, with(cable.formatted("50")).at("/bone", stem))).isEqualTo("no fact");
    assertThat(Taken.of(FIXED, with(cable.formatted("105")).at("/bone", stem)))
        .isEqualTo("yes fact");
    assertThat(Taken.of(FIXED, with(cable.formatted("106")).at("/bone", stem)))
        .isEqualTo("no fact");
    assertThat(Taken.of(FIXED, with(cable.formatted("{min: 98, max: 102}")).at("/bone", stem)))
        .startsWith("no or yes fact");
  }

  @Test
  void metal_that_begins_at_the_plates_end_is_as_safe_as_nothing_beyond_it() {
    assertThat(Taken.of(ID, beside(100, 172))).isEqualTo("0 assumed");
    assertThat(Taken.of(ID, beside(200, 260))).isEqualTo("0 assumed");
  }

  @Test
  void metal_under_the_plate_counts_by_its_end_nearer_to_a_plate_end() {
    // 148 - 100 and 260 - 200
    assertThat(Taken.of(ID, beside(148, 200))).isEqualTo("2 assumed");
  }

  @Test
  void a_nail_along_the_whole_plate_overlaps_all_of_it() {
    // nail from 0–30 to 340–370, plate of 160
    String nail = ", {id: 'nail-1', kind: 'nail', entry: 'antegrade', lengthMm: 340}";
    assertThat(Taken.of(ID, with(nail))).isEqualTo("6.667 assumed");
    assertThat(Taken.of(FIXED, with(nail))).isEqualTo("yes fact");
  }

  @Test
  void a_retrograde_nail_is_placed_from_the_far_end() {
    // its end at 364–394, so it begins at 284–314: 24 to 54 beyond the plate
    String nail = ", {id: 'nail-1', kind: 'nail', entry: 'retrograde', lengthMm: 80}";
    assertThat(Taken.of(ID, with(nail).at("/bone", "{lengthMm: 394}")))
        .startsWith("1–2.25 assumed");
  }

  @Test
  void a_nail_that_cannot_be_placed_leaves_it_open() {
    assertThat(Taken.of(ID, with(", {id: 'nail-1', kind: 'nail', lengthMm: 340}")))
        .startsWith("unknown, ask op-1/fixation/nail-1/lengthMm");
  }

  @Test
  void a_second_plate_counts_where_it_lies_apart() {
    String apart =
        ", {id: 'plate-2', kind: 'plate', family: 'large-fragment-narrow', holes: 3, lengthMm: 48,"
            + " place: {firstHoleMm: 316}}";
    // 308 - 260 = 48
    assertThat(Taken.of(ID, with(apart))).isEqualTo("2 assumed");
    String along = apart.replace("316", "200");
    assertThat(Taken.of(ID, with(along))).isEqualTo("none: no other implant in the bone");
  }

  @Test
  void nothing_else_in_the_bone_is_none() {
    assertThat(Taken.of(ID, with())).isEqualTo("none: no other implant in the bone");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("none: no plate in place");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
