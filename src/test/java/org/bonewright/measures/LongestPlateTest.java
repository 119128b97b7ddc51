package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/**
 * Two plates on one bone: of ten holes with six filled, and of eight holes with all of them filled.
 */
class LongestPlateTest {

  private static final String FIXATION = "/operations/0/fixation";

  private static CaseText two(String lengthOfFirst, String lengthOfSecond) {
    return CaseText.plated()
        .at(
            "/operations/0",
            """
            {fixation: [
              {id: 'plate-1', kind: 'plate', surface: 'medial', holes: 10, %s
                place: {zoneBetweenHoles: [5, 6]},
                screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2}]},
              {id: 'plate-2', kind: 'plate', surface: 'anterolateral', holes: 8, %s
                place: {zoneBetweenHoles: [4, 5]},
                screws: [{at: [1, 2, 3, 4, 5, 6, 7, 8], type: 'cortical', cortices: 2}]}]}
            """
                .formatted(lengthOfFirst, lengthOfSecond));
  }

  @Test
  void the_longest_plate_is_judged_wherever_it_stands_in_the_file() {
    assertThat(Taken.of("plate-screw-density", two("lengthMm: 160,", "lengthMm: 130,")))
        .isEqualTo("0.6 fact");
    assertThat(Taken.of("plate-screw-density", two("lengthMm: 120,", "lengthMm: 130,")))
        .isEqualTo("1 fact");
  }

  @Test
  void of_two_that_are_known_to_be_equally_long_the_first_is_judged() {
    assertThat(Taken.of("plate-screw-density", two("lengthMm: 130,", "lengthMm: 130,")))
        .isEqualTo("0.6 fact");
  }

  @Test
  void a_plate_of_unknown_length_may_be_the_longest() {
    assertThat(Taken.of("plate-screw-density", two("", "lengthMm: 130,")))
        .isEqualTo("0.6–1 fact, ask op-1/fixation/plate-1/lengthMm");
    assertThat(Taken.of("plate-screw-density", two("", "")))
        .isEqualTo(
            "0.6–1 fact, ask op-1/fixation/plate-1/lengthMm and op-1/fixation/plate-2/lengthMm");
  }

  @Test
  void lengths_that_overlap_leave_both_possible_and_lengths_that_do_not_leave_one() {
    assertThat(
            Taken.of(
                "plate-screw-density", two("lengthMm: {min: 120, max: 140},", "lengthMm: 130,")))
        .isEqualTo("0.6–1 fact, ask op-1/fixation/plate-1/lengthMm");
    assertThat(
            Taken.of(
                "plate-screw-density", two("lengthMm: {min: 135, max: 140},", "lengthMm: 130,")))
        .isEqualTo("0.6 fact");
  }

  @Test
  void words_that_differ_between_the_two_stay_open_and_what_is_the_same_of_both_is_known() {
    CaseText text =
        two("", "").at(FIXATION + "/1", "{screws: [{at: [3, 4, 5, 6], type: 'cortical'}]}");
    assertThat(Taken.of("end-holes-filled", text))
        .isEqualTo(
            "no or yes fact, ask op-1/fixation/plate-1/lengthMm and"
                + " op-1/fixation/plate-2/lengthMm");
    assertThat(Taken.of("end-holes-filled", two("", ""))).isEqualTo("yes fact");
  }

  @Test
  void nothing_is_read_where_one_of_the_two_tells_nothing() {
    CaseText text = two("", "lengthMm: 130,").without(FIXATION + "/0/screws");
    assertThat(Taken.of("plate-screw-density", text))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws and op-1/fixation/plate-1/lengthMm");
  }
}
