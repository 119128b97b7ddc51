package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleMapTest {

  private static final String ID = "hole-map";

  @Test
  void is_complete_where_every_old_hole_is_told() {
    assertThat(Taken.of(ID, Revised.turned())).isEqualTo("complete fact");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {place: null}                                             | op-1/fixation/plate-1/place
          # two holes 16 mm apart round a zone of 2 mm: 7 mm each way
          {place: {firstHoleMm: null}}                              | op-1/fixation/plate-1/place
          {surface: null}                                           | op-1/fixation/plate-1/side
          {screws: null}                                            | op-1/fixation/plate-1/screws
          {family: null, spacingMm: 16}                             | op-1/fixation/plate-1/diameterMm
          {screws: [{at: [1], type: 'locking', diameterMm: 5}]}     | op-1/fixation/plate-1/screws/cortices
          """)
  void asks_for_what_is_missing_of_an_old_plate(String patch, String ask) {
    CaseText text = Revised.turned().at(Revised.OLD_PLATE, patch);
    assertThat(Taken.of(ID, text)).isEqualTo("unknown, ask " + ask);
  }

  @Test
  void asks_what_an_earlier_operation_put_in() {
    CaseText text = Revised.turned().at("/operations/0", "{fixation: null}");
    assertThat(Taken.of(ID, text)).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void asks_for_the_level_of_a_piece_left_inside() {
    CaseText text =
        Revised.turned()
            .at(
                "/operations/0",
                "{removed: [{of: 'op-0/plate-0', left: [{id: 'tip', piece: 'screw tip'}]}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("unknown, ask op-1/tip/atMm");
  }

  @Test
  void is_contradicted_by_fresh_bone_where_an_old_hole_lies() {
    String fresh = "{screws: [{at: [1, 10], type: 'cortical', track: 'fresh'}]}";
    assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, fresh)))
        .isEqualTo("contradicted fact");
    // an overlap of 0.5 mm may come from the film
    assertThat(Taken.of(ID, Revised.shifted(4).at(Revised.PLATE, fresh)))
        .isEqualTo("complete fact");
  }

  @Test
  void an_overlap_of_one_millimetre_may_come_from_the_film_and_no_more() {
    String fresh = "{screws: [{at: [1], type: 'cortical', track: 'fresh'}], place: {firstHoleMm: ";
    // 3.5 mm between middles, less 4.5
    assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, fresh + "111.5}}")))
        .isEqualTo("complete fact");
    assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, fresh + "111.4}}")))
        .isEqualTo("contradicted fact");
    assertThat(working(Revised.same().at(Revised.PLATE, fresh + "111.4}}")))
        .isEqualTo("stage-1/plate-1 hole 1");
  }

  private static String working(CaseText text) {
    return Taken.reading(ID, Taken.subject(text.file(), "plan-a")).working();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {place: {firstHoleMm: {min: 103, max: 113}}}        | complete fact
          {place: {firstHoleMm: {min: 102.9, max: 113}}}      | unknown, ask op-1/fixation/plate-1/place
          {screws: [{at: [1], type: 'cortical', cortices: 2, diameterMm: {min: 4, max: 5}}]}   | complete fact
          {screws: [{at: [1], type: 'cortical', cortices: 2, diameterMm: {min: 4, max: 5.1}}]} | unknown, ask op-1/fixation/plate-1/diameterMm
          """)
  void takes_a_level_to_ten_millimetres_and_a_diameter_to_one_as_known(String patch, String reads) {
    assertThat(Taken.of(ID, Revised.turned().at(Revised.OLD_PLATE, patch))).isEqualTo(reads);
  }

  @Test
  void is_contradicted_by_an_old_hole_where_none_was_drilled() {
    String old = "{screws: [{at: [1, 10], type: 'cortical', track: 'old-hole'}]}";
    assertThat(Taken.of(ID, Revised.turned().at(Revised.PLATE, old)))
        .isEqualTo("contradicted fact");
    assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, old))).isEqualTo("complete fact");
  }

  @Test
  void is_not_contradicted_by_an_old_hole_where_nobody_knows_at_which_level_the_new_plate_lies() {
    String old = "{place: null, screws: [{at: [1, 10], type: 'cortical', track: 'old-hole'}]}";
    assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, old)))
        .startsWith("complete or contradicted fact");
  }

  @Test
  void may_be_contradicted_where_the_new_plate_is_not_laid_exactly() {
    CaseText text =
        Revised.same()
            .at(
                Revised.PLATE,
                "{place: {firstHoleMm: {min: 106, max: 114}},"
                    + " screws: [{at: [1], type: 'cortical', track: 'fresh'}]}");
    assertThat(Taken.of(ID, text))
        .isEqualTo("complete or contradicted fact, ask plan-a/stage-1/fixation/plate-1/place");
  }
}
