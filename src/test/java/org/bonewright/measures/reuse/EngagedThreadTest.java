package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

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
  void is_none_where_no_screw_meets_an_old_hole() {
    assertThat(Taken.of(ENGAGED, Revised.turned()))
        .isEqualTo("none: no plate screw meets an old track");
  }
}
