package org.bonewright.measures.healing;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class WeeksTest {

  private static final String SINCE = "weeks-since-operation-now";

  @Test
  void run_from_the_operation_to_the_last_finding() {
    // (100 - 2) / 7 = 14; what was found on day 1 came before it
    assertThat(Taken.of(SINCE, Found.since("{day: 1}, {day: 100}"))).isEqualTo("14 fact");
    assertThat(Taken.of(SINCE, Found.planned("deformity", "{day: 100}"))).isEqualTo("14 fact");
  }

  @Test
  void are_a_range_where_days_are() {
    // (79 - 2) / 7 = 11, (100 - 2) / 7 = 14
    assertThat(Taken.of(SINCE, Found.since("{day: {min: 79, max: 100}}")))
        .isEqualTo("11–14 fact, ask findings after op-1/day");
  }

  @Test
  void are_not_known_without_a_finding_or_without_a_day() {
    assertThat(Taken.of(SINCE, Found.since(""))).isEqualTo("unknown, ask findings after op-1/day");
    assertThat(Taken.of(SINCE, Found.since("{day: 100}").at("/operations/0", "{day: null}")))
        .isEqualTo("unknown, ask op-1/day");
  }

  @Test
  void run_past_an_operation_that_was_only_a_stage_or_put_in_nothing() {
    CaseText text =
        CaseText.of(
            """
            { schema: 'bonewright/case/1', reference: 'test', provenance: 'invented', patient: {},
              bone: {name: 'tibia', side: 'left'}, injury: {}, findings: [{day: 142}],
              operations: [
                {id: 'op-1', day: 2, fixation: [{id: 'nail-1', kind: 'nail'}]},
                {id: 'op-2', day: 50, fixation: [], biology: []},
                {id: 'op-3', day: 60, outcome: {result: 'stage-done'}}],
              plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}] }
            """);
    assertThat(Taken.of(SINCE, text)).isEqualTo("20 fact");
    assertThat(Taken.of("weeks-since-operation-before", text)).isEqualTo("20 fact");
    // to the day of the operation, not of a finding: (60 - 2) / 7 = 8.286
    assertThat(Taken.of("weeks-since-operation-before", text, "op-3")).isEqualTo("8.286 fact");
  }

  @Test
  void are_not_known_where_the_last_operation_does_not_say_what_it_put_in() {
    CaseText text =
        CaseText.plated()
            .redone("deformity")
            .with("{findings: [{day: 142}]}")
            .at("/operations/0", "{fixation: null, biology: null}");
    assertThat(Taken.of(SINCE, text)).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of("metal-holds-now", text)).isEqualTo("unknown, ask op-1/fixation");
    assertThat(
            Taken.of(
                SINCE, text.at("/operations/0", "{biology: [{kind: 'autograft-cancellous'}]}")))
        .isEqualTo("20 fact");
  }

  @Test
  void run_from_the_injury_where_nothing_was_operated_on() {
    CaseText text =
        CaseText.bare()
            .with(
                "{operations: [], findings: [{day: 70}],"
                    + " plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}");
    assertThat(Taken.of(SINCE, text)).isEqualTo("10 fact");
  }

  @Test
  void since_the_injury_start_on_day_0() {
    assertThat(Taken.of("weeks-since-injury", Found.planned("deformity", "{day: 364}")))
        .isEqualTo("52 fact");
  }
}
