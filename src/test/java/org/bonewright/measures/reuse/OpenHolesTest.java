package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpenHolesTest {

  @ParameterizedTest
  @CsvSource({
    // six holes of 4.5 in 24 mm under a plate from 100 to 260 mm
    "open-holes-left, 6",
    "open-holes-beyond, 0",
    "open-holes-in-line, 0",
    "open-hole-ratio-beyond, 0",
    "open-hole-ratio-spanned, 0.188"
  })
  void under_a_plate_of_the_same_length_are_spanned(String id, String reads) {
    assertThat(Taken.of(id, Revised.turned())).startsWith(reads + " ");
  }

  @ParameterizedTest
  @CsvSource({
    // a plate from 132 to 228 mm leaves out 108 and 252
    "open-holes-left, 6",
    "open-holes-beyond, 2",
    "open-holes-in-line, 1",
    "open-hole-ratio-beyond, 0.188",
    // (132 - 108 - 2.25) / 24 = 21.75 / 24
    "open-hole-to-end, 0.906"
  })
  void beyond_a_short_plate_are_counted_with_their_distance(String id, String reads) {
    assertThat(Taken.of(id, Revised.shortened())).startsWith(reads + " ");
  }

  @Test
  void without_any_implant_all_lie_in_one_line() {
    assertThat(Taken.of("open-holes-beyond", Revised.takenOut())).isEqualTo("6 fact");
    assertThat(Taken.of("open-holes-in-line", Revised.takenOut())).isEqualTo("6 fact");
    assertThat(Taken.of("open-hole-to-end", Revised.takenOut()))
        .isEqualTo("none: no open hole beyond an implant");
  }

  @Test
  void a_hole_filled_again_is_not_open() {
    assertThat(Taken.of("open-holes-left", Revised.same())).isEqualTo("0 fact");
    // 3 mm off, the old middle lies outside of the new screw of 4.5 mm
    assertThat(Taken.of("open-holes-left", Revised.shifted(3))).isEqualTo("6 fact");
  }

  @Test
  void a_hole_is_filled_where_its_middle_lies_within_the_new_screw() {
    assertThat(left("110.25")).isEqualTo("0 fact");
    assertThat(left("110.3")).isEqualTo("6 fact");
    // 0 to 4 mm off
    assertThat(left("{min: 108, max: 112}")).isEqualTo("0–6 fact, ask plan-a/stage-1/fixation");
    // 2.25 mm off at the least, 2.3 or more
    assertThat(left("{min: 110.25, max: 112}")).isEqualTo("0–6 fact, ask plan-a/stage-1/fixation");
    assertThat(left("{min: 110.3, max: 112}")).isEqualTo("6 fact");
  }

  private static String left(String firstHole) {
    return Taken.of(
        "open-holes-left",
        Revised.same().at(Revised.PLATE, "{place: {firstHoleMm: " + firstHole + "}}"));
  }

  @Test
  void holes_opened_at_an_earlier_operation_are_taken_as_filled_in() {
    CaseText text =
        Revised.takenOut()
            .with(
                "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: [], removed: [{of:"
                    + " 'op-1/plate-1', holes: []}]}, {id: 'stage-2', fixation: []}]}]}");
    assertThat(Taken.of("open-holes-left", text, "plan-a/stage-1")).isEqualTo("6 fact");
    assertThat(Taken.of("open-holes-left", text, "plan-a/stage-2")).isEqualTo("0 fact");
  }

  @Test
  void only_holes_beyond_the_same_end_and_on_the_same_side_are_in_one_line() {
    // one plate medial with a screw at 108, one anterior with one at 112; both are taken out
    String second =
        "{id: 'plate-2', kind: 'plate', family: 'large-fragment-narrow', surface: '%s', holes: 10,"
            + " place: {firstHoleMm: 112}, screws: [{at: [1], type: 'cortical', cortices: 2}]}";
    String first =
        "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow', surface: 'medial', holes:"
            + " 10, place: {firstHoleMm: 108}, screws: [{at: [1], type: 'cortical', cortices: 2}]},";
    CaseText across =
        Revised.shortened()
            .at("/operations/0", "{fixation: [" + first + second.formatted("anterior") + "]}");
    CaseText along =
        Revised.shortened()
            .at("/operations/0", "{fixation: [" + first + second.formatted("medial") + "]}");
    assertThat(Taken.of("open-holes-beyond", across)).isEqualTo("2 fact");
    assertThat(Taken.of("open-holes-in-line", across)).isEqualTo("1 fact");
    assertThat(Taken.of("open-holes-in-line", along)).isEqualTo("2 fact");
  }

  @Test
  void they_are_named() {
    assertThat(working("open-holes-left", Revised.same())).isEqualTo("none");
    assertThat(working("open-holes-left", Revised.turned()))
        .isEqualTo("6 holes, op-1/plate-1 hole 1 to op-1/plate-1 hole 10");
    CaseText one =
        Revised.turned().at(Revised.OLD_PLATE, "{screws: [{at: [1], type: 'cortical'}]}");
    assertThat(working("open-holes-left", one)).isEqualTo("op-1/plate-1 hole 1");
  }

  private static String working(String measure, CaseText text) {
    return Taken.reading(measure, Taken.subject(text.file(), "plan-a")).working();
  }

  @Test
  void a_plate_that_stays_leaves_none() {
    CaseText text = Revised.turned().at("/plans/0/stages/0", "{removed: []}");
    assertThat(Taken.of("open-holes-left", text)).isEqualTo("0 fact");
  }

  @Test
  void a_hole_at_the_edge_of_a_plate_read_off_is_perhaps_beyond() {
    // plate from 100-104 to 260-264 mm; the hole at 102 mm may lie before it
    CaseText text =
        Revised.turned()
            .at(
                Revised.OLD_PLATE,
                "{place: {firstHoleMm: 102}, screws: [{at: [1], type: 'cortical'}]}")
            .at(Revised.PLATE, "{place: {firstHoleMm: {min: 108, max: 112}}}");
    assertThat(Taken.of("open-holes-beyond", text))
        .isEqualTo("0–1 fact, ask plan-a/stage-1/fixation");
  }

  @Test
  void where_the_old_plate_lay_is_asked_for() {
    assertThat(Taken.of("open-holes-left", Revised.unmapped()))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
  }
}
