package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** A screw tip left at 150 mm, a nail stump at 300 mm; new screws at 108, 140, 172 mm and on. */
class PiecesTest {

  private static CaseText left() {
    return Revised.turned()
        .at(
            "/operations/0",
            "{removed: [{of: 'op-0/plate-0', left: [{id: 'tip', piece: 'screw tip', atMm: 150},"
                + " {id: 'stump', piece: 'nail stump', atMm: 300}]}]}");
  }

  private static CaseText decided(String tip, String stump) {
    return left()
        .at(
            "/plans/0/stages/0",
            "{pieces: [{of: 'op-1/tip', decision: '%s'}, {of: 'op-1/stump', decision: '%s'}]}"
                .formatted(tip, stump));
  }

  @Test
  void a_plan_that_does_not_name_them_has_not_decided() {
    assertThat(Taken.of("pieces-left", left())).isEqualTo("2 fact");
    assertThat(Taken.of("pieces-undecided", left())).isEqualTo("2 fact");
    assertThat(Taken.of("pieces-kept", left())).isEqualTo("2 fact");
  }

  @Test
  void a_decision_to_keep_is_a_decision() {
    assertThat(Taken.of("pieces-undecided", decided("stays", "removed"))).isEqualTo("0 fact");
    assertThat(Taken.of("pieces-kept", decided("stays", "removed"))).isEqualTo("1 fact");
  }

  @Test
  void the_nearest_that_stays_counts_from_its_level_to_the_edge_of_the_screw() {
    // 150 - 140 - 4.5 / 2
    assertThat(Taken.of("piece-to-screw", decided("stays", "removed"))).isEqualTo("7.75 assumed");
    // 300 - 252 - 2.25
    assertThat(Taken.of("piece-to-screw", decided("removed", "stays"))).isEqualTo("45.75 assumed");
    assertThat(Taken.of("piece-to-screw", decided("removed", "removed")))
        .isEqualTo("none: no piece stays");
  }

  @Test
  void they_are_named_and_so_is_the_screw_that_comes_close() {
    assertThat(working("pieces-left", left()))
        .isEqualTo("op-1/tip (screw tip), op-1/stump (nail stump)");
    assertThat(working("pieces-left", Revised.turned())).isEqualTo("none");
    assertThat(working("piece-to-screw", tipAt("150"))).isEqualTo("none close");
    // 146.75 - 140 - 2.25 = 4.5, as wide as the screw
    assertThat(working("piece-to-screw", tipAt("146.75")))
        .isEqualTo("op-1/tip by stage-1/plate-1 hole 3");
    assertThat(working("piece-to-screw", tipAt("146.8"))).isEqualTo("none close");
  }

  private static String working(String measure, CaseText text) {
    return Taken.reading(measure, Taken.subject(text.file(), "plan-a")).working();
  }

  private static CaseText tipAt(String level) {
    return Revised.turned()
        .at(
            "/operations/0",
            "{removed: [{of: 'op-0/plate-0', left: [{id: 'tip', piece: 'screw tip', atMm: "
                + level
                + "}]}]}")
        .at("/plans/0/stages/0", "{pieces: [{of: 'op-1/tip', decision: 'stays'}]}");
  }

  @Test
  void a_piece_at_a_level_that_is_a_range_may_touch_the_screw() {
    // 136 to 150 around the screw at 140: 0 to 10 - 2.25
    assertThat(Taken.of("piece-to-screw", tipAt("{min: 136, max: 150}")))
        .startsWith("0–7.75 assumed");
    // 144 to 150: 1.75 to 7.75
    assertThat(Taken.of("piece-to-screw", tipAt("{min: 144, max: 150}")))
        .startsWith("1.75–7.75 assumed");
  }

  @Test
  void a_piece_moves_with_the_bone_that_is_cut_out_before_it() {
    // 4 mm out between 120 and 124 and no gap left: the tip reads 146, 146 - 140 - 2.25
    CaseText cut =
        tipAt("150")
            .at(
                "/plans/0/stages/0",
                "{resection: [{fromMm: 120, toMm: 124}], reduction: {gapNearMm: 0, gapFarMm: 0}}");
    assertThat(Taken.of("piece-to-screw", cut)).startsWith("3.75 ");
  }

  @Test
  void in_the_past_what_is_not_recorded_is_not_known() {
    CaseText text =
        Revised.turned()
            .with(
                "{plans: null, operations: [{id: 'op-1', fixation: [], removed: [{of: 'op-0/a',"
                    + " left: [{id: 'tip', piece: 'tip', atMm: 150}]}]}, {id: 'op-2', fixation: []}]}");
    assertThat(Taken.of("pieces-left", text)).isEqualTo("1 fact");
    assertThat(Taken.of("pieces-undecided", text)).isEqualTo("0–1 fact, ask op-2/pieces");
    assertThat(Taken.of("pieces-kept", text)).isEqualTo("0–1 fact, ask op-2/pieces");
    assertThat(Taken.of("piece-to-screw", text)).isEqualTo("unknown, ask op-2/pieces");
  }
}
