package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Holes 16 mm apart and 4.5 mm wide; with hole 1 at 108 mm, hole 4 lies 24 mm before the middle of
 * the line and hole 7 as far beyond it, both open; the gap is 1 mm.
 */
class OpenHoleClearanceTest {

  private static final String ID = "open-hole-clearance";
  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText measured() {
    return CaseText.plated().at(PLATE, "{place: {firstHoleMm: 108}}");
  }

  @Test
  void runs_from_the_edge_of_the_hole_to_the_edge_of_the_gap() {
    // 24 - 2.25 - 0.5
    assertThat(Taken.of(ID, measured())).isEqualTo("21.25 assumed");
  }

  @Test
  void is_below_zero_where_they_overlap() {
    // hole 5 open at -8; gap of 14 mm: 8 - 2.25 - 7
    CaseText text =
        measured()
            .at(PLATE, "{screws: [{at: [1, 3, 6, 8, 10], type: 'cortical'}]}")
            .at("/operations/0/reduction", "{gapFarMm: 14}");
    assertThat(Taken.of(ID, text)).isEqualTo("-1.25 assumed");
  }

  @Test
  void the_nearest_hole_is_named() {
    // holes 2, 4, 7 and 9 are open; 7 lies 24 off, 4 by 24 too: the first of the nearest
    assertThat(Taken.reading(ID, Taken.subject(measured().file(), "op-1")).working())
        .isEqualTo("hole 4, its place read off");
  }

  @Test
  void a_plug_closes_a_hole() {
    // holes 4 and 7 plugged: the next are 2 and 9, 56 mm off: 56 - 2.25 - 0.5
    assertThat(Taken.of(ID, measured().at(PLATE, "{plugged: [4, 7]}"))).isEqualTo("53.25 assumed");
  }

  @Test
  void a_place_read_off_a_film_widens_it() {
    // shift (16 - 2) / 2 = 7 mm each way: 17 to 31 mm, less 2.75
    assertThat(Taken.of(ID, CaseText.plated()))
        .isEqualTo("14.25–28.25 assumed, ask op-1/fixation/plate-1/place");
  }

  @Test
  void with_every_hole_filled_the_plate_length_counts() {
    CaseText text =
        measured().at(PLATE, "{screws: [{at: [1,2,3,4,5,6,7,8,9,10], type: 'cortical'}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("160 fact");
  }

  @Nested
  class WidthOfTheLine {

    @Test
    void is_the_zone_where_the_line_is_not_simple() {
      // 24 - 2.25 - 40 / 2
      CaseText text =
          measured().at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}");
      assertThat(Taken.of(ID, text)).isEqualTo("1.75 assumed");
    }

    @Test
    void is_either_where_the_pattern_is_unknown() {
      // gap 1, or zone 2 up to the outer diameter of 24: 24 - 2.25 - 12 to 24 - 2.25 - 0.5
      assertThat(Taken.of(ID, measured().at("/injury", "{pattern: null}")))
          .isEqualTo("9.75–21.25 assumed, ask injury/pattern");
    }

    @Test
    void may_be_as_wide_as_the_plate_is_long_where_the_far_gap_is_not_known() {
      // 24 - 2.25 - 160 to 24 - 2.25 - 0
      CaseText text = measured().at("/operations/0/reduction", "{gapFarMm: null}");
      assertThat(Taken.of(ID, text)).isEqualTo("-4.5–21.75 assumed, ask op-1/reduction/gapFarMm");
    }

    @Test
    void is_asked_for_where_it_is_a_range() {
      // 24 - 2.25 - 2 to 24 - 2.25 - 0.5
      CaseText text = measured().at("/operations/0/reduction", "{gapFarMm: {min: 1, max: 4}}");
      assertThat(Taken.of(ID, text)).isEqualTo("19.75–21.25 assumed, ask op-1/reduction/gapFarMm");
    }
  }

  @Test
  void what_is_missing_is_asked_for() {
    String screws = "unknown, ask op-1/fixation/plate-1/screws";
    assertThat(Taken.of(ID, measured().at(PLATE, "{screws: null}"))).isEqualTo(screws);
    assertThat(Taken.of(ID, measured().at(PLATE, "{family: null}"))).isEqualTo(screws);
    assertThat(Taken.of(ID, measured().at(PLATE, "{holes: null}"))).isEqualTo(screws);
    assertThat(Taken.of(ID, CaseText.plated().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("none: no plate in place");
  }
}
