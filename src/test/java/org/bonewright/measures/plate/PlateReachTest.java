package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/**
 * A plate of ten holes 16 mm apart and 160 mm long, so 8 mm beyond either last hole; hole 1 at 108
 * mm puts it from 100 to 260 mm. The line lies from 179 to 181 mm, the bone is 24 mm wide.
 */
class PlateReachTest {

  private static final String REACH = "reach-beyond-zone";
  private static final String SPREAD = "screw-spread-share";
  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText measured() {
    return CaseText.plated().at(PLATE, "{place: {firstHoleMm: 108}}");
  }

  private static CaseText screws(String holes) {
    return measured().at(PLATE, "{screws: [{at: " + holes + ", type: 'cortical'}]}");
  }

  @Test
  void reach_runs_from_the_edge_of_the_zone_to_the_end_of_the_plate() {
    // 179 - 100 = 79, and 260 - 181 = 79; 79 / 24
    assertThat(Taken.of(REACH, measured())).isEqualTo("3.292 assumed");
  }

  @Test
  void reach_is_that_of_the_shorter_side() {
    // plate from 102 to 262: 77 and 81
    assertThat(Taken.of(REACH, measured().at(PLATE, "{place: {firstHoleMm: 110}}")))
        .isEqualTo("3.208 assumed");
  }

  @Test
  void reach_is_a_range_where_the_place_is_read_off_a_film() {
    // 7 mm each way: 72 to 86, but at most half of 160 - 2
    assertThat(Taken.of(REACH, CaseText.plated()))
        .isEqualTo("3–3.292 assumed, ask op-1/fixation/plate-1/place");
  }

  @Test
  void reach_asks_for_what_is_missing() {
    assertThat(Taken.of(REACH, measured().at("/injury", "{zone: null, pattern: 'wedge'}")))
        .isEqualTo("unknown, ask injury/zone");
    assertThat(Taken.of(REACH, measured().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(REACH, measured().at(PLATE, "{holes: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/holes");
    assertThat(Taken.of(REACH, CaseText.nailed())).isEqualTo("none: no plate in place");
  }

  @Test
  void spread_is_a_share_of_the_plate_over_the_fragment() {
    // holes 1 to 5 and 6 to 10: 64 / 79
    assertThat(Taken.of(SPREAD, measured())).isEqualTo("0.81 assumed");
  }

  @Test
  void spread_is_that_of_the_worse_fragment() {
    // holes 3 to 5: 32 / 79
    assertThat(Taken.of(SPREAD, screws("[3, 4, 5, 6, 8, 10]"))).isEqualTo("0.405 assumed");
    assertThat(Taken.of(SPREAD, screws("[5, 6, 8, 10]"))).isEqualTo("0 assumed");
  }

  @Test
  void spread_needs_a_screw_on_either_side() {
    assertThat(Taken.of(SPREAD, screws("[6, 8, 10]")))
        .isEqualTo("none: no plate screw on one side of the zone");
    assertThat(Taken.of(SPREAD, measured().at(PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
  }

  @Test
  void a_plate_end_is_held_in_its_last_hole_or_the_one_next_to_it() {
    assertThat(Taken.of("end-holes-filled", measured())).isEqualTo("yes fact");
    assertThat(Taken.of("end-holes-filled", screws("[2, 5, 6, 9]"))).isEqualTo("yes fact");
    assertThat(Taken.of("end-holes-filled", screws("[3, 5, 6, 9]"))).isEqualTo("no fact");
    assertThat(Taken.of("end-holes-filled", screws("[2, 5, 6, 8]"))).isEqualTo("no fact");
    assertThat(Taken.of("end-holes-filled", measured().at(PLATE, "{holes: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/holes");
  }

  @Test
  void density_is_the_share_of_holes_filled() {
    assertThat(Taken.of("plate-screw-density", measured())).isEqualTo("0.6 fact");
    assertThat(Taken.of("plate-screw-density", measured().at(PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of("plate-screw-density", measured().at(PLATE, "{holes: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/holes");
  }

  @Test
  void density_counts_a_lag_screw_through_the_plate() {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{fixation: [{id: 'plate-1', kind: 'plate', holes: 10,"
                    + " screws: [{at: [1, 3, 8, 10], type: 'cortical'}]},"
                    + " {id: 'lag-1', kind: 'lag-screw', throughPlate: 'plate-1', hole: 5}]}");
    assertThat(Taken.of("plate-screw-density", text)).isEqualTo("0.5 fact");
  }

  @Test
  void the_width_at_the_zone_is_that_of_the_section_there() {
    assertThat(Taken.of("outer-at-zone", measured())).isEqualTo("24 fact");
    assertThat(Taken.of("outer-at-zone", measured().at("/injury", "{zone: null}")))
        .isEqualTo("21.6–26.4 assumed, ask injury/zone");
  }
}
