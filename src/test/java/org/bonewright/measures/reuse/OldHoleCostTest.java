package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class OldHoleCostTest {

  private static final String LOST = "cortices-lost-to-old-holes";
  private static final String LEFT = "cortices-where-holes-cost";
  private static final String LOCKED = "locking-screws-where-holes-cost";

  @Test
  void three_screws_in_their_old_holes_lose_six_cortices() {
    assertThat(Taken.of(LOST, Revised.same())).startsWith("6 ");
    assertThat(Taken.of(LEFT, Revised.same())).startsWith("0 ");
  }

  @Test
  void fresh_bone_loses_none() {
    assertThat(Taken.of(LOST, Revised.turned())).startsWith("0 ");
    assertThat(Taken.of(LEFT, Revised.turned()))
        .isEqualTo("none: no such side loses hold to an old hole");
  }

  @Test
  void a_thread_cut_by_a_quarter_loses_half_in_each_cortex() {
    // 3 mm off, thread 4.5, core 3.0: 0.73 of the ring is left: half a credit in each of six
    assertThat(Taken.of(LOST, Revised.shifted(3))).startsWith("3 ");
    assertThat(Taken.of(LEFT, Revised.shifted(3))).startsWith("3 ");
  }

  @Test
  void only_the_side_that_loses_is_asked_what_is_left() {
    // far side: one of two screws in its old hole, 2 cortices left; near side fresh, one screw
    CaseText text =
        Revised.same()
            .at(Revised.OLD_PLATE, "{screws: [{at: [10], type: 'cortical'}]}")
            .at(Revised.PLATE, "{screws: [{at: [5, 8, 10], type: 'cortical', cortices: 2}]}");
    assertThat(Taken.of(LOST, text)).startsWith("2 ");
    assertThat(Taken.of(LEFT, text)).startsWith("2 ");
    assertThat(Taken.of("cortices-weaker-side", text)).startsWith("2 ");
  }

  @Test
  void locked_sides_are_counted_in_screws() {
    // old hole 10; far side 8 fresh and 10 reused: one screw left
    CaseText text =
        Revised.same()
            .at(Revised.OLD_PLATE, "{screws: [{at: [10], type: 'cortical', diameterMm: 5}]}")
            .at(
                Revised.PLATE,
                "{screws: [{at: [3, 5, 8, 10], type: 'locking', cortices: 2, diameterMm: 5}]}");
    assertThat(Taken.of(LOCKED, text)).startsWith("1 ");
    assertThat(Taken.of(LEFT, text)).isEqualTo("none: no such side loses hold to an old hole");
  }

  @Test
  void an_old_plate_of_unknown_level_may_cost_all_or_nothing() {
    assertThat(Taken.of(LOST, Revised.unmapped()))
        .isEqualTo("0–6 fact, ask plan-a/stage-1/fixation/plate-1/screws/track");
  }

  @Test
  void a_side_with_both_kinds_of_screws_is_counted_in_cortices() {
    CaseText text =
        Revised.same()
            .at(Revised.OLD_PLATE, "{screws: [{at: [10], type: 'cortical', diameterMm: 5}]}")
            .at(
                Revised.PLATE,
                "{screws: [{at: [3, 5, 8], type: 'cortical', cortices: 2}, {at: [10], type:"
                    + " 'locking', cortices: 2, diameterMm: 5}]}");
    assertThat(Taken.of(LOCKED, text)).isEqualTo("none: no such side loses hold to an old hole");
    assertThat(Taken.of(LEFT, text)).startsWith("2 ");
  }
}
