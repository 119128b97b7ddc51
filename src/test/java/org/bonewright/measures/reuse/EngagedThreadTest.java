package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class EngagedThreadTest {

  private static final String ENGAGED = "thread-engaged-least";

  @Test
  void in_the_very_same_hole_none_of_the_thread_engages() {
    assertThat(Taken.of(ENGAGED, Revised.same())).startsWith("0 ");
  }

  /**
   * 3 mm beside an old hole of 4.5 mm, thread of 4.5 mm, core of 3 mm: the old hole takes 2.36 mm²
   * of the ring's 8.84 mm² (two circles at a distance), so that 73 % are left.
   */
  @Test
  void beside_an_old_hole_it_is_the_part_of_the_ring_outside_of_it() {
    assertThat(Taken.of(ENGAGED, Revised.shifted(3))).startsWith("73 ");
  }

  @Test
  void of_an_old_hole_in_one_cortex_the_other_is_whole_whichever_it_is() {
    CaseText old =
        Revised.same()
            .at(
                Revised.OLD_PLATE,
                "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 1}]}");
    // entered from the same side the near cortex is gone, from the other side the far one
    assertThat(Taken.of(ENGAGED, old)).startsWith("0 ");
    assertThat(Taken.of(ENGAGED, old.at(Revised.PLATE, "{surface: 'lateral'}"))).startsWith("0 ");
  }

  @Test
  void is_a_range_where_the_place_is_one() {
    CaseText text =
        Revised.same().at(Revised.PLATE, "{place: {firstHoleMm: {min: 111, max: 118}}}");
    assertThat(Taken.of(ENGAGED, text))
        .isEqualTo("73–100 fact, ask plan-a/stage-1/fixation/plate-1/place");
  }

  @Test
  void asks_which_holes_are_filled() {
    assertThat(Taken.of(ENGAGED, Revised.same().at(Revised.PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/screws");
  }

  @Test
  void is_none_where_no_screw_meets_an_old_hole() {
    assertThat(Taken.of(ENGAGED, Revised.turned()))
        .isEqualTo("none: no plate screw meets an old track");
  }
}
