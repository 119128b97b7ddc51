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
