package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The zone lies at 179 to 181 mm, holes the usual 16 mm apart, hole 1 at 108 and hole 10 at 252 mm.
 */
class PlateEndScrewTest {

  private static final String LOCKED = "type: 'locking', cortices: 2";

  private static CaseText ends(String near, String far) {
    return CaseText.plated()
        .redone("no-union-metal-intact")
        .at("/bone", "{sections: [{atMm: 50, outerMm: 24}, {atMm: 330, outerMm: 24}]}")
        .at(
            "/plans/0/stages/0/fixation/0",
            ("{place: {zoneBetweenHoles: [5, 6], firstHoleMm: 108}, screws: [{at: [2], %s},"
                    + " {at: [5, 6], type: 'locking', cortices: 2}, {at: [8], %s}]}")
                .formatted(near, far));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          type: 'cortical', cortices: 2              | conventional fact
          type: 'locking', cortices: 2, tiltDeg: 10  | angled fact
          type: 'locking', cortices: 2, tiltDeg: -15 | angled fact
          type: 'locking', cortices: 2, tiltDeg: 9   | locked fact
          type: 'locking', cortices: 2               | locked fact
          type: 'locking', cortices: 1, tiltDeg: 15  | single-cortex fact
          type: 'cortical', cortices: 1              | single-cortex fact
          """)
  void is_the_last_screw_of_either_end(String screw, String reads) {
    assertThat(Taken.of("plate-end-screw", ends(screw, screw))).isEqualTo(reads);
  }

  @Test
  void the_stiffer_end_counts() {
    CaseText text = ends(LOCKED, "type: 'cortical', cortices: 2");
    assertThat(Taken.of("plate-end-screw", text)).isEqualTo("locked fact");
    // hole 2 at 124: (179 - 124) / 24 = 2.292; hole 8 at 220 is conventional
    assertThat(Taken.of("end-screw-reach", text)).isEqualTo("2.292 assumed");
  }

  @Test
  void both_ends_are_told() {
    CaseText text = ends(LOCKED, "type: 'cortical'");
    assertThat(Taken.reading("plate-end-screw", Taken.subject(text.file(), "plan-a")).working())
        .isEqualTo("hole 2 locked, hole 8 conventional");
  }

  @Test
  void the_shorter_stiff_end_gives_the_reach() {
    // hole 8 at 220: (220 - 181) / 24 = 1.625
    assertThat(Taken.of("end-screw-reach", ends(LOCKED, LOCKED))).isEqualTo("1.625 assumed");
  }

  @Test
  void soft_ends_have_no_reach() {
    String soft = "type: 'cortical', cortices: 2";
    assertThat(Taken.of("end-screw-reach", ends(soft, soft)))
        .isEqualTo("none: no stiff screw at a plate end");
  }

  @Test
  void in_the_past_a_tilt_not_recorded_is_not_known() {
    CaseText text =
        CaseText.plated()
            .at("/operations/0/fixation/0", "{screws: [{at: [1, 5, 6, 10], " + LOCKED + "}]}");
    assertThat(Taken.of("plate-end-screw", text))
        .isEqualTo("angled or locked fact, ask op-1/fixation/plate-1/screws");
  }

  @Test
  void plates_without_a_locking_screw_are_left_out() {
    assertThat(Taken.of("plate-end-screw", CaseText.plated())).isEqualTo("no-locking fact");
    assertThat(Taken.of("plate-end-screw", CaseText.nailed())).isEqualTo("no-locking fact");
    assertThat(Taken.of("end-screw-reach", CaseText.nailed())).isEqualTo("none: no plate in place");
  }

  @Test
  void what_is_missing_is_asked_for() {
    CaseText noScrews = CaseText.plated().at("/operations/0/fixation/0", "{screws: null}");
    assertThat(Taken.of("plate-end-screw", noScrews))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of("end-screw-reach", noScrews))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(
            Taken.of(
                "end-screw-reach",
                ends(LOCKED, LOCKED).at("/injury", "{zone: null, pattern: 'wedge'}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/place");
  }
}
