package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class BrokeAtEmptyHoleTest {

  private static final String ID = "broke-at-empty-hole-before";

  @Test
  void yes_once_a_plate_has_broken_there() {
    CaseText text = CaseText.plated().redone("plate-broken-at-empty-hole");
    assertThat(Taken.of(ID, text)).isEqualTo("yes fact");
  }

  @Test
  void the_operation_s_own_failure_does_not_count() {
    CaseText text = CaseText.plated().redone("plate-broken-at-empty-hole");
    assertThat(Taken.of(ID, text, "op-1")).isEqualTo("no fact");
  }

  @Test
  void no_where_it_failed_otherwise_or_did_not_fail() {
    CaseText text = CaseText.plated().redone("plate-broken-at-filled-hole");
    assertThat(Taken.of(ID, text)).isEqualTo("no fact");
    assertThat(Taken.of(ID, text.at("/operations/0", "{outcome: {result: 'united', mode: null}}")))
        .isEqualTo("no fact");
  }

  @Test
  void cannot_be_told_where_only_that_the_plate_broke_is_recorded() {
    CaseText text = CaseText.plated().redone("plate-broken");
    assertThat(Taken.of(ID, text)).isEqualTo("no or yes fact, ask op-1/outcome/mode");
    assertThat(Taken.of(ID, CaseText.plated().redone("screws-pulled-out"))).isEqualTo("no fact");
  }

  @Test
  void cannot_be_told_where_the_mode_of_a_failure_is_not_recorded() {
    CaseText text = CaseText.plated().redone("plate-bent");
    String ask = "no or yes fact, ask op-1/outcome/mode";
    assertThat(Taken.of(ID, text.at("/operations/0/outcome", "{mode: null}"))).isEqualTo(ask);
    assertThat(Taken.of(ID, text.at("/operations/0", "{outcome: null}"))).isEqualTo(ask);
  }

  @Test
  void no_where_there_was_no_plate_to_break() {
    CaseText text =
        CaseText.nailed().redone("deformity").at("/operations/0/outcome", "{mode: null}");
    assertThat(Taken.of(ID, text)).isEqualTo("no fact");
  }

  @Test
  void a_stage_not_yet_done_cannot_have_failed() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0", "{stages: [{id: 'stage-1'}, {id: 'stage-2'}]}");
    assertThat(Taken.of(ID, text, "plan-a/stage-2")).isEqualTo("no fact");
  }
}
