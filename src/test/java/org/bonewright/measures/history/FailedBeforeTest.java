package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FailedBeforeTest {

  private static final CaseText TWO = CaseText.plated().redone("plate-bent");

  @Test
  void no_operation_before_means_no() {
    assertThat(Taken.of("failed-before", TWO, "op-1")).isEqualTo("no fact");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          failed     | yes fact
          united     | no fact
          unknown    | unknown, ask op-1/outcome/result
          under-way  | no fact
          """)
  void follows_the_result_of_the_operation_before(String result, String reads) {
    CaseText text = TWO.at("/operations/0/outcome", "{result: '" + result + "'}");
    assertThat(Taken.of("failed-before", text)).isEqualTo(reads);
  }

  @Test
  void is_unknown_where_no_outcome_is_recorded() {
    assertThat(Taken.of("failed-before", TWO.at("/operations/0", "{outcome: null}")))
        .isEqualTo("unknown, ask op-1/outcome/result");
  }

  @Test
  void an_operation_that_does_not_say_whether_it_grafted_may_have_been_one() {
    CaseText text =
        CaseText.bare()
            .with(
                """
                {operations: [
                  {id: 'op-1', outcome: {result: 'failed', mode: 'infection'}},
                  {id: 'op-2', fixation: []}]}
                """);
    assertThat(Taken.of("failed-before", text)).isEqualTo("unknown, ask op-2/biology");
    assertThat(Taken.of("failed-before", text.at("/operations/1", "{biology: []}")))
        .isEqualTo("no fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [{of: 'op-1/nail-1', bolts: [3]}] | yes fact
          [{of: 'op-1/nail-1'}]             | no fact
          []                                | no fact
          """)
  void taking_bolts_out_is_meant_to_unite_the_bone_and_taking_the_nail_out_is_not(
      String removed, String reads) {
    CaseText text =
        CaseText.nailed()
            .redone("bolt-broken")
            .at("/plans/0/stages/0", "{fixation: [], biology: [], removed: " + removed + "}");
    assertThat(Taken.of("failed-before", text)).isEqualTo(reads);
  }

  @Test
  void looks_past_a_stage_that_did_what_it_was_for() {
    CaseText text =
        CaseText.bare()
            .with(
                """
                {operations: [
                  {id: 'op-1', outcome: {result: 'failed', mode: 'infection'}},
                  {id: 'op-2', outcome: {result: 'stage-done'}},
                  {id: 'op-3'}]}
                """);
    assertThat(Taken.of("failed-before", text)).isEqualTo("yes fact");
  }

  @Test
  void a_later_stage_of_a_plan_still_answers_to_the_operation_that_failed() {
    CaseText text =
        TWO.at(
            "/plans/0",
            "{stages: [{id: 'stage-1'}, {id: 'stage-2', biology: [{kind: 'marrow'}]}]}");
    assertThat(Taken.of("failed-before", text, "plan-a/stage-2")).isEqualTo("yes fact");
    assertThat(Taken.of("failed-before", text, "plan-a/stage-1")).isEqualTo("no fact");
  }
}
