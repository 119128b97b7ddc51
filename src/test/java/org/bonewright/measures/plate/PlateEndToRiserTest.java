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
