package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class HoleRowTest {

  private static final String ID = "holes-in-tight-row";

  @Test
  void turned_round_the_bone_no_hole_is_in_the_row_of_another() {
    assertThat(Taken.of(ID, Revised.turned())).isEqualTo("1 fact");
  }

  @Test
  void a_hole_half_a_spacing_off_stands_between_two_old_ones() {
    // 172, 180, 188, 196: 8 mm between middles, 3.5 mm of bone
    assertThat(Taken.of(ID, Revised.shifted(8))).isEqualTo("4 fact");
  }

  @Test
  void a_hole_used_again_counts_once() {
    assertThat(Taken.of(ID, Revised.same())).isEqualTo("1 fact");
  }

  @Test
  void one_diameter_of_bone_is_enough() {
    // old at 108 alone, new at 117: 9 - 4.5 = 4.5 of bone; at 116.9 less
    String one = "{screws: [{at: [1], type: 'cortical'}]}";
    var text = Revised.shifted(9).at(Revised.OLD_PLATE, one).at(Revised.PLATE, one);
    assertThat(Taken.of(ID, text)).isEqualTo("1 fact");
    assertThat(Taken.of(ID, text.at(Revised.PLATE, "{place: {firstHoleMm: 116.9}}")))
        .isEqualTo("2 fact");
    assertThat(Taken.of(ID, text.at(Revised.PLATE, "{place: {firstHoleMm: {min: 116, max: 118}}}")))
        .isEqualTo("1–2 fact, ask plan-a/stage-1/fixation/plate-1/place");
  }

  @Test
  void the_holes_of_a_row_are_named() {
    String one = "{screws: [{at: [1], type: 'cortical'}]}";
    CaseText apart = Revised.shifted(9).at(Revised.OLD_PLATE, one).at(Revised.PLATE, one);
    CaseText close = Revised.shifted(8).at(Revised.OLD_PLATE, one).at(Revised.PLATE, one);
    assertThat(working(apart)).isEqualTo("none close to another");
    assertThat(working(close)).isEqualTo("op-1/plate-1 hole 1, stage-1/plate-1 hole 1");
  }

  private static String working(CaseText text) {
    return Taken.reading(ID, Taken.subject(text.file(), "plan-a")).working();
  }

  @Test
  void a_hole_half_a_millimetre_off_is_the_same_hole_and_one_farther_off_is_another() {
    String one = "{screws: [{at: [1], type: 'cortical'}]}";
    CaseText text = Revised.same().at(Revised.OLD_PLATE, one).at(Revised.PLATE, one);
    // the very same hole is none beside the new one
    assertThat(Taken.of(ID, text.at(Revised.PLATE, "{place: {firstHoleMm: 108.5}}")))
        .isEqualTo("1 fact");
    assertThat(Taken.of(ID, text.at(Revised.PLATE, "{place: {firstHoleMm: 111}}")))
        .isEqualTo("2 fact");
    // perhaps the same hole, perhaps 6 mm beside it
    assertThat(Taken.of(ID, text.at(Revised.PLATE, "{place: {firstHoleMm: {min: 108, max: 114}}}")))
        .isEqualTo("1–2 fact, ask plan-a/stage-1/fixation/plate-1/place");
  }

  @Test
  void a_row_of_old_holes_alone_is_no_row_of_this_plan() {
    assertThat(Taken.of(ID, Revised.takenOut())).isEqualTo("none: no new hole");
  }

  @Test
  void where_the_old_plate_lay_is_asked_for() {
    assertThat(Taken.of(ID, Revised.unmapped()))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
  }
}
