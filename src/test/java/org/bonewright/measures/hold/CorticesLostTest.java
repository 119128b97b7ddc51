package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three screws of 4.5 mm on either side, laid beside or into the old holes of the plate before:
 * hole 1 of that one at 108 mm. At 1.23 mm beside, half of the thread holds; in the old hole none.
 */
class CorticesLostTest {

  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText again(double firstHole, String screw) {
    return ScrewCreditTest.again(
        firstHole, "{at: [1, 3, 5, 6, 8, 10], type: 'cortical', " + screw + "}");
  }

  @ParameterizedTest(name = "{0} mm beside, {1}: held {2}, lost {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0     | cortices: 2 | 0 fact | 6 fact
          1.23  | cortices: 2 | 3 fact | 3 fact
          8     | cortices: 2 | 6 fact | 0 fact
          0     | cortices: 1 | 0 fact | 3 fact
          1.23  | cortices: 1 | 1.5 fact | 1.5 fact
          8     | cortices: 1 | 3 fact | 0 fact
          # a screw that stays in the plate crosses none, and so loses none
          0     | cortices: 0 | 0 fact | 0 fact
          8     | cortices: 0 | 0 fact | 0 fact
          """)
  void a_cortex_is_held_or_lost_to_the_old_hole(
      double beside, String screw, String held, String lost) {
    CaseText text = again(108 + beside, screw);
    assertThat(Taken.of("cortices-weaker-side", text)).isEqualTo(held);
    assertThat(Taken.of("cortices-lost-to-old-holes", text)).isEqualTo(lost);
  }

  @Test
  void where_one_or_both_are_crossed_as_many_may_be_lost() {
    CaseText text = again(108, "cortices: {min: 1, max: 2}");
    assertThat(Taken.of("cortices-lost-to-old-holes", text))
        .isEqualTo("3–6 fact, ask plan-a/stage-1/fixation/plate-1/screws/cortices");
  }

  @Test
  void a_larger_screw_named_for_the_old_hole_holds_in_full_where_its_step_is_not_known() {
    String larger = "cortices: 2, track: 'old-hole-larger'";
    assertThat(Taken.of("cortices-weaker-side", again(108, larger + ", diameterMm: 5.5")))
        .isEqualTo("6 fact");
    // named as larger, and yet it is not
    assertThat(Taken.of("cortices-weaker-side", again(108, larger + ", diameterMm: 4.5")))
        .isEqualTo("0 fact");
    assertThat(Taken.of("cortices-weaker-side", again(108, larger + ", diameterMm: 4.0")))
        .isEqualTo("0 fact");
  }

  private static CaseText kept(String state) {
    return CaseText.plated()
        .at(
            PLATE,
            "{screws: [{at: [1, 3, 5, 8, 10], type: 'cortical', cortices: 2},"
                + " {at: [6], type: 'cortical', cortices: 2, "
                + state
                + "}]}")
        .redone("no-union-metal-intact")
        .at("/plans/0/stages/0", "{fixation: [], removed: []}");
  }

  @ParameterizedTest(name = "{0}: {1} before, {2} now")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          state: 'sound'                    | 6 fact | 6 fact
          state: 'loose'                    | 6 fact | 4 fact
          state: 'broken'                   | 6 fact | 4 fact
          state: 'backed-out', stateDay: 90 | 6 fact | 4 fact
          """)
  void a_screw_of_a_plate_left_in_place_counts_until_it_was_seen_to_fail(
      String state, String before, String now) {
    CaseText text = kept(state);
    assertThat(Taken.of("cortices-weaker-side", text, "op-1")).isEqualTo(before);
    assertThat(Taken.of("cortices-weaker-side", text)).isEqualTo(now);
  }

  @Test
  void a_screw_that_failed_only_later_still_counts_at_an_operation_in_between() {
    CaseText text = kept("state: 'loose', stateDay: 90");
    CaseText twice =
        CaseText.of(
            text.toString()
                .replace(
                    "}],\"plans\"",
                    "},{\"id\":\"op-2\",\"day\":60,\"fixation\":[],\"removed\":[]}],\"plans\""));
    assertThat(Taken.of("cortices-weaker-side", twice, "op-2")).isEqualTo("6 fact");
    assertThat(Taken.of("cortices-weaker-side", twice)).isEqualTo("4 fact");
  }
}
