package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/**
 * The first plate lies medially from 100 to 260 mm, the second anteriorly from 127.5 to 232.5 mm.
 */
class TwoPlatesTest {

  private static final String FIRST =
      "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow', holes: 10, lengthMm: 160,"
          + " surface: 'medial', place: {zoneBetweenHoles: [5, 6], firstHoleMm: 108},"
          + " screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical'}]}";
  private static final String SECOND =
      ", {id: 'plate-2', kind: 'plate', family: 'small-fragment-locking', holes: 8, lengthMm: 105,"
          + " surface: 'anterior', place: {zoneBetweenHoles: [4, 5], firstHoleMm: 134.5},"
          + " screws: [{at: [1, 2, 4, 5, 7], type: 'locking', cortices: 2}]}";

  private static CaseText with(String second) {
    return CaseText.plated().at("/operations/0", "{fixation: [" + FIRST + second + "]}");
  }

  @Test
  void two_are_counted() {
    assertThat(Taken.of("two-plates", with(SECOND))).isEqualTo("yes fact");
    assertThat(Taken.of("two-plates", with(""))).isEqualTo("no fact");
    assertThat(Taken.of("two-plates", CaseText.bare()))
        .isEqualTo("no or yes fact, ask op-1/fixation");
  }

  @Test
  void the_angle_is_that_between_their_surfaces() {
    assertThat(Taken.of("angle-between-plates", with(SECOND))).isEqualTo("90 fact");
    assertThat(Taken.of("angle-between-plates", with(SECOND.replace("surface: 'anterior',", ""))))
        .isEqualTo("unknown, ask op-1/fixation/plate-2/surface");
  }

  @Test
  void the_stagger_is_counted_in_holes_of_the_larger_plate() {
    // 27.5 / 16 on either side
    assertThat(Taken.of("plate-end-stagger", with(SECOND))).isEqualTo("1.719 assumed");
    // from 119.5 to 224.5: 19.5 and 35.5
    assertThat(Taken.of("plate-end-stagger", with(SECOND.replace("134.5", "126.5"))))
        .isEqualTo("1.219 assumed");
  }

  @Test
  void the_weakest_side_of_the_weakest_plate_counts() {
    // plate 2: near 1, 2, 4; far 5 and 7
    assertThat(Taken.of("cortices-weakest-plate", with(SECOND))).isEqualTo("4 assumed");
    assertThat(Taken.of("cortices-weakest-plate", with(SECOND.replace(", cortices: 2", ""))))
        .startsWith("2–4 assumed, ask op-1/fixation/plate-");
    assertThat(
            Taken.of(
                "cortices-weakest-plate",
                with(SECOND.replace("cortices: 2", "cortices: 2, state: 'stripped'"))))
        .isEqualTo("0 assumed");
  }

  @Test
  void without_a_second_plate_there_is_nothing_to_compare() {
    for (String id :
        java.util.List.of("angle-between-plates", "plate-end-stagger", "cortices-weakest-plate")) {
      assertThat(Taken.of(id, with(""))).isEqualTo("none: no second plate");
      assertThat(Taken.of(id, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    }
  }

  @Test
  void stripping_is_taken_as_stated() {
    assertThat(Taken.of("stripped-percent", with("").at("/operations/0", "{strippedPercent: 40}")))
        .isEqualTo("40 fact");
    assertThat(Taken.of("stripped-percent", with("")))
        .isEqualTo("unknown, ask op-1/strippedPercent");
  }
}
