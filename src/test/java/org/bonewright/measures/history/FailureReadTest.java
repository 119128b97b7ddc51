package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The operation is on day 2. */
class FailureReadTest {

  private static CaseText ended(String outcome) {
    return CaseText.plated().at("/operations/0", "{outcome: " + outcome + "}");
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          operation-failed      | {result: 'failed'}                         | yes fact
          operation-failed      | {result: 'united'}                         | no fact
          operation-failed      | {result: 'under-way'}                      | no fact
          operation-failed      | {result: 'stage-done'}                     | no fact
          operation-failed      | {result: 'unknown'}                        | unknown, ask op-1/outcome/result
          operation-failed      | null                                       | unknown, ask op-1/outcome/result
          failure-mode-recorded | {result: 'failed', mode: 'plate-bent'}     | yes record
          failure-mode-recorded | {result: 'failed', mode: 'plate-broken'}   | yes record
          failure-mode-recorded | {result: 'failed'}                         | no record
          failure-mode-recorded | null                                       | no record
          # (72 - 2) / 7 = 10; (86 - 2) / 7 = 12
          weeks-to-failure      | {result: 'failed', day: 72}                | 10 fact
          weeks-to-failure      | {result: 'failed', day: {min: 72, max: 86}} | 10–12 fact, ask op-1/day
          weeks-to-failure      | {result: 'failed', weeksAfter: 13}         | 13 fact
          weeks-to-failure      | {result: 'failed', weeksAfter: {min: 8, max: 11}, day: {min: 72, max: 86}} | 10–11 fact, ask op-1/day
          weeks-to-failure      | {result: 'failed', weeksAfter: 9.5, day: 72} | 10 fact
          weeks-to-failure      | {result: 'failed'}                         | unknown, ask op-1/outcome/day
          weeks-to-failure      | {result: 'united', day: 72}                | none: did not fail
          failure-class         | {result: 'failed'}                         | unknown, ask op-1/outcome/mode
          failure-class         | {result: 'united'}                         | none: did not fail
          """)
  void read_how_the_operation_ended(String measure, String outcome, String reads) {
    assertThat(Taken.of(measure, ended(outcome), "op-1")).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "screws-pulled-out-in-sequence, hold",
    "plate-pulled-off-as-block, hold",
    "bolt-backed-out, hold",
    "screws-pulled-out, hold",
    "plate-bent, bending",
    "plate-broken, breakage",
    "nail-broken, breakage",
    "plate-broken-at-empty-hole, breakage",
    "nail-broken-mid-shaft, breakage",
    "infection, other",
    "no-union-metal-intact, other"
  })
  void sort_modes_by_what_their_time_tells(String mode, String kind) {
    assertThat(Taken.of("failure-class", ended("{result: 'failed', mode: '" + mode + "'}"), "op-1"))
        .isEqualTo(kind + " fact");
  }

  @Test
  void a_plan_has_not_failed() {
    CaseText planned = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of("operation-failed", planned, "plan-a/stage-1")).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "graft before: {0} reads {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          []                                                  | 0 fact
          [{kind: 'autograft-cancellous'}]                    | 1 fact
          null                                                | 0–1 fact, ask op-1/biology
          """)
  void earlier_grafts_are_counted_and_silence_may_be_one(String biology, String reads) {
    CaseText planned =
        CaseText.plated().redone("plate-bent").at("/operations/0", "{biology: " + biology + "}");
    assertThat(Taken.of("grafts-before", planned, "plan-a")).isEqualTo(reads);
  }
}
