package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class HoleWeakeningTest {

  private static final String LEFT = "hole-weakening";

  /** 4.5 of 24 mm is 0.1875: low 62 % from 0.18 on, high 66 + 34 × (0.2 − 0.1875) / 0.1 = 70 %. */
  @Test
  void is_a_range_between_the_curves_at_the_widest_hole() {
    assertThat(Taken.of(LEFT, Revised.turned())).isEqualTo("62–70 model");
    assertThat(Taken.of(LEFT, Revised.takenOut())).isEqualTo("62–70 model");
  }

  /** 6 of 24 mm is 0.25: low 62 − 12 × 0.05 / 0.1 = 56 %, high 66 − 44 × 0.05 / 0.4 = 60.5 %. */
  @Test
  void is_less_beside_a_wider_hole() {
    CaseText wide =
        Revised.turned()
            .at(
                Revised.OLD_PLATE,
                "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', diameterMm: 6}]}");
    assertThat(Taken.of(LEFT, wide)).isIn("56–60 model", "56–61 model");
  }

  @Test
  void is_none_where_every_hole_is_filled_again() {
    assertThat(Taken.of(LEFT, Revised.same())).isEqualTo("none: no hole is left open");
  }

  @Test
  void is_not_known_where_the_old_holes_are_not() {
    assertThat(Taken.of(LEFT, Revised.unmapped())).startsWith("unknown, ask ");
  }
}
