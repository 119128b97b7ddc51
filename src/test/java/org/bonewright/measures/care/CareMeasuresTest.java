package org.bonewright.measures.care;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The past may have been otherwise than recorded; a plan is closed. */
class CareMeasuresTest {

  private static final String PLAN =
      "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: [], %s}], %s}]}";

  private static CaseText past(String aftercare) {
    return CaseText.plated().at("/operations/0", "{aftercare: " + aftercare + "}");
  }

  private static CaseText plan(String stage, String plan) {
    return CaseText.plated().at("", PLAN.formatted(stage, plan));
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          load-limit-given        | {load: [{untilDay: 42, limitKg: 20}]} | yes fact
          load-limit-given        | {load: []}                            | no fact
          load-limit-given        | null                                  | unknown, ask op-1/aftercare/load
          visits-set              | {visitsWeeks: [2, 6, 12]}             | 3 fact
          visits-set              | null                                  | unknown, ask op-1/aftercare/visitsWeeks
          # 0, 2, 6, 20: 14 weeks between the last two
          longest-review-interval | {visitsWeeks: [2, 6, 20]}             | 14 fact
          longest-review-interval | {visitsWeeks: [16, 20]}               | 16 fact
          longest-review-interval | {visitsWeeks: []}                     | none: no visit
          motion-from-day         | {motionFromDay: 2}                    | 2 fact
          motion-from-day         | null                                  | unknown, ask op-1/aftercare/motionFromDay
          motion-settled          | {motionFromDay: 2}                    | yes fact
          motion-settled          | null                                  | unknown, ask op-1/aftercare/motionFromDay
          triggers-named          | null                                  | none: not a plan
          """)
  void read_the_past(String measure, String aftercare, String reads) {
    assertThat(Taken.of(measure, past(aftercare))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} reads {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          load-limit-given        | no fact
          visits-set              | 0 fact
          longest-review-interval | none: no visit
          motion-from-day         | none: no start of motion planned
          motion-settled          | no fact
          triggers-named          | 0 fact
          alternatives-named      | 0 fact
          """)
  void take_what_a_plan_does_not_say_as_not_planned(String measure, String reads) {
    assertThat(Taken.of(measure, plan("biology: []", "label: 'x'"), "plan-a")).isEqualTo(reads);
  }

  @Test
  void count_what_a_plan_names() {
    CaseText text = plan("biology: []", "triggers: ['a', 'b'], alternatives: ['c']");
    assertThat(Taken.of("triggers-named", text, "plan-a")).isEqualTo("2 fact");
    assertThat(Taken.of("alternatives-named", text, "plan-a")).isEqualTo("1 fact");
  }

  @ParameterizedTest(name = "op-1 {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {result: 'failed', day: 60}   | 1 fact
          {result: 'united'}            | 0 fact
          {result: 'stage-done'}        | 0 fact
          {result: 'unknown'}           | 0–1 fact, ask operations/outcome
          null                          | 0–1 fact, ask operations/outcome
          """)
  void count_failed_operations_before(String outcome, String reads) {
    CaseText text =
        plan("biology: []", "label: 'x'").at("/operations/0", "{outcome: " + outcome + "}");
    assertThat(Taken.of("failed-operations-before", text, "plan-a")).isEqualTo(reads);
  }
}
