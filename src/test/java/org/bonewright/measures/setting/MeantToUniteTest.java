package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class MeantToUniteTest {

  private static String meant(String change) {
    return Taken.of("meant-to-unite", CaseText.plated().at("/operations/0", change));
  }

  @Test
  void a_fixation_is() {
    assertThat(meant("{}")).isEqualTo("yes fact");
  }

  @Test
  void a_stage_that_did_what_it_was_for_is_not() {
    assertThat(meant("{outcome: {result: 'stage-done', day: 20}}")).isEqualTo("no fact");
  }

  @Test
  void a_debridement_alone_is_not() {
    assertThat(meant("{fixation: []}")).isEqualTo("no fact");
  }

  @Test
  void graft_alone_is() {
    assertThat(meant("{fixation: [], biology: [{kind: 'marrow'}]}")).isEqualTo("yes fact");
  }

  @Test
  void bolts_taken_out_are() {
    assertThat(meant("{fixation: [], removed: [{of: 'op-0/nail-1', bolts: [1]}]}"))
        .isEqualTo("yes fact");
  }

  @Test
  void what_was_put_in_is_asked_where_it_is_not_stated() {
    assertThat(meant("{fixation: null}")).isEqualTo("no or yes fact, ask op-1/fixation");
  }

  @Test
  void a_plan_that_names_neither_implant_nor_graft_is_not() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/plans/0/stages/0", "{fixation: null}");
    assertThat(Taken.of("meant-to-unite", text)).isEqualTo("no fact");
  }

  /** A fixator, then a second stage as told. */
  private static String fixatorThen(String second) {
    CaseText text =
        CaseText.plated()
            .redone("infection")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', fixation: [{id: 'frame', kind: 'external-fixator'}]}, "
                    + second
                    + "]}");
    return Taken.of("meant-to-unite", text, "plan-a/stage-1");
  }

  @Test
  void a_stage_whose_fixator_gives_way_to_a_plate_later_is_not() {
    assertThat(
            fixatorThen(
                "{id: 'stage-2', removed: [{of: 'stage-1/frame'}],"
                    + " fixation: [{id: 'plate-1', kind: 'plate'}]}"))
        .isEqualTo("no fact");
  }

  @Test
  void a_stage_whose_fixator_is_taken_off_for_nothing_else_is() {
    assertThat(fixatorThen("{id: 'stage-2', removed: [{of: 'stage-1/frame'}], fixation: []}"))
        .isEqualTo("yes fact");
  }

  @Test
  void a_stage_whose_fixator_stays_beside_a_later_plate_is() {
    assertThat(
            fixatorThen("{id: 'stage-2', removed: [], fixation: [{id: 'plate-1', kind: 'plate'}]}"))
        .isEqualTo("yes fact");
  }

  @Test
  void a_plan_is_whose_last_stage_holds_the_bone() {
    CaseText text =
        CaseText.plated()
            .redone("infection")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', fixation: [{id: 'frame', kind: 'external-fixator'}]},"
                    + " {id: 'stage-2', removed: [{of: 'stage-1/frame'}],"
                    + " fixation: [{id: 'plate-1', kind: 'plate'}]}]}");
    assertThat(Taken.of("meant-to-unite", text)).isEqualTo("yes fact");
  }
}
