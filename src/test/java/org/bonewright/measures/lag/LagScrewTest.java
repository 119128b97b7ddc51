package org.bonewright.measures.lag;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The line runs from 170 to 190 mm; a thread of 3.5 mm has a head of 6, one of 4.5 a head of 8. */
class LagScrewTest {

  private static final String ONE = "id: 'lag-1', kind: 'lag-screw'";

  private static CaseText screws(String... screws) {
    return CaseText.plated()
        .at("/injury", "{pattern: 'oblique', zone: {fromMm: 170, toMm: 190}}")
        .at("/operations/0", "{fixation: [{" + String.join("}, {", screws) + "}]}");
  }

  @Test
  void is_counted_where_this_operation_puts_it_in() {
    assertThat(Taken.of("lag-screw-put-in", screws(ONE))).isEqualTo("yes fact");
    assertThat(Taken.of("lag-screw-put-in", CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of("lag-screw-put-in", CaseText.bare()))
        .isEqualTo("no or yes fact, ask op-1/fixation");
  }

  @Test
  void is_not_counted_again_where_a_later_operation_leaves_it() {
    CaseText later =
        CaseText.of(screws(ONE).redone("plate-bent").toString())
            .at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(Taken.of("lag-screw-put-in", later)).isEqualTo("no fact");
  }

  @ParameterizedTest
  @ValueSource(strings = {"lag-angle", "lag-to-tip", "lag-glides"})
  void has_no_numbers_where_there_is_none(String measure) {
    assertThat(Taken.of(measure, CaseText.plated())).isEqualTo("none: no lag screw put in");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void furthest_from_a_right_angle_counts() {
    assertThat(
            Taken.of(
                "lag-angle",
                screws(
                    ONE + ", angleToLineDeg: 85",
                    "id: 'lag-2', kind: 'lag-screw', angleToLineDeg: 70")))
        .isEqualTo("70 fact");
  }

  @Test
  void of_which_the_angle_is_not_told_may_be_the_worst() {
    assertThat(
            Taken.of(
                "lag-angle",
                screws(ONE + ", angleToLineDeg: 85", "id: 'lag-2', kind: 'lag-screw'")))
        .isEqualTo("0–85 fact, ask op-1/fixation/lag-2/angleToLineDeg");
    assertThat(Taken.of("lag-angle", screws(ONE)))
        .isEqualTo("unknown, ask op-1/fixation/lag-1/angleToLineDeg");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # away from the landmark: 190 - 176 = 14 to the far tip, 182 - 170 = 12 to the near; 12 / 6
          atMm: 176, exitMm: 182, diameterMm: 3.5 | 2 fact
          # 12 / 8
          atMm: 176, exitMm: 182, diameterMm: 4.5 | 1.5 fact
          # 12 / 5 of a head of 5 up to a thread of 3, of 6 up to one of 4
          atMm: 176, exitMm: 182, diameterMm: 3   | 2.4 fact
          atMm: 176, exitMm: 182, diameterMm: 4   | 2 fact
          atMm: 176, exitMm: 182, diameterMm: 4.1 | 1.5 fact
          # towards it: 182 - 170 = 12 and 190 - 176 = 14
          atMm: 182, exitMm: 176, diameterMm: 3.5 | 2 fact
          # straight across: 5 mm to one end and 15 to the other, which of them is not told
          atMm: 175, exitMm: 175, diameterMm: 3.5 | 0.833 fact
          # beyond the zone
          atMm: 195, exitMm: 200, diameterMm: 3.5 | 0 fact
          atMm: 176, exitMm: 182                  | unknown, ask op-1/fixation/lag-1/atMm
          atMm: 176, diameterMm: 3.5              | unknown, ask op-1/fixation/lag-1/atMm
          """)
  void keeps_its_distance_from_the_tips_in_heads(String screw, String reads) {
    assertThat(Taken.of("lag-to-tip", screws(ONE + ", " + screw))).isEqualTo(reads);
  }

  @Test
  void has_no_tips_to_keep_from_in_a_wedge() {
    CaseText wedge = screws(ONE).at("/injury", "{pattern: 'wedge'}");
    assertThat(Taken.of("lag-to-tip", wedge)).isEqualTo("none: no single oblique or spiral line");
  }

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({
    "'yes', 'yes', yes fact",
    "'yes', 'no', no fact",
    "'unknown', 'no', no fact",
    "'yes', 'unknown', 'no or yes fact, ask op-1/fixation/lag-2/glidingHole'"
  })
  void glides_only_where_each_of_them_does(String one, String two, String reads) {
    assertThat(
            Taken.of(
                "lag-glides",
                screws(
                    ONE + ", glidingHole: '" + one + "'",
                    "id: 'lag-2', kind: 'lag-screw', glidingHole: '" + two + "'")))
        .isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          id: 'lag-1', kind: 'lag-screw'                            | 1 fact
          id: 'w', kind: 'cerclage', atMm: [180], holds: 'wedge'    | 1 fact
          id: 'w', kind: 'cerclage', atMm: [180], holds: 'fragment' | 0 fact
          id: 'w', kind: 'cerclage', atMm: [180]                    | 0–1 fact, ask op-1/fixation/cerclage/holds
          """)
  void and_wires_round_wedges_stand_for_pieces(String implant, String reads) {
    assertThat(Taken.of("pieces-fixed-singly", screws(implant))).isEqualTo(reads);
  }

  @Test
  void stands_for_no_piece_where_two_lines_lie_apart() {
    CaseText segmental = screws(ONE).at("/injury", "{pattern: 'segmental'}");
    assertThat(Taken.of("pieces-fixed-singly", segmental)).isEqualTo("none: two lines apart");
    assertThat(Taken.of("pieces-fixed-singly", CaseText.bare()))
        .isEqualTo("0–∞ fact, ask op-1/fixation");
  }
}
