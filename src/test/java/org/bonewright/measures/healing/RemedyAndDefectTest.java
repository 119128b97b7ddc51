package org.bonewright.measures.healing;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemedyAndDefectTest {

  @Nested
  class SmallRemedies {

    private static String remedy(String treatment) {
      return Taken.of(
          "small-remedy",
          Found.planned("callus-line-open", "{day: 200}")
              .with("{nonOperative: [" + treatment + "]}"));
    }

    @Test
    void last_six_weeks_after_the_operation() {
      assertThat(remedy("{kind: 'ultrasound', fromDay: 100, toDay: 142}")).isEqualTo("yes record");
      assertThat(remedy("{kind: 'ultrasound', fromDay: 100, toDay: 141}")).isEqualTo("no record");
      assertThat(remedy("{kind: 'brace', fromDay: 0, toDay: 100}")).isEqualTo("no record");
      assertThat(remedy("{kind: 'traction', fromDay: 100, toDay: 160}")).isEqualTo("no record");
    }

    @Test
    void that_go_on_last_until_the_last_finding() {
      assertThat(remedy("{kind: 'shock-waves', fromDay: 158}")).isEqualTo("yes record");
      assertThat(remedy("{kind: 'shock-waves', fromDay: 159}")).isEqualTo("no record");
    }

    @Test
    void include_a_delayed_union_looked_at_again() {
      String delayed = "{day: 150, diagnosis: 'delayed-union'}, {day: %d}";
      assertThat(
              Taken.of("small-remedy", Found.planned("callus-line-open", delayed.formatted(192))))
          .isEqualTo("yes record");
      assertThat(
              Taken.of("small-remedy", Found.planned("callus-line-open", delayed.formatted(191))))
          .isEqualTo("no record");
    }

    @Test
    void include_bolts_taken_out_alone() {
      CaseText nail = CaseText.nailed().redone("callus-line-open");
      String bolts = "removed: [{of: 'op-1/nail-1', bolts: [1]}]";
      assertThat(
              Taken.of(
                  "small-remedy", nail.at("/plans/0/stages/0", "{fixation: [], " + bolts + "}")))
          .isEqualTo("yes record");
      assertThat(Taken.of("small-remedy", nail.at("/plans/0/stages/0", "{" + bolts + "}")))
          .isEqualTo("no record");
    }
  }

  @Nested
  class FalseJoints {

    @ParameterizedTest
    @CsvSource({
      "falseJoint: 'present', yes fact",
      "falseJoint: 'absent', no fact",
      "motionAtSite: 'absent', no fact",
      "motionAtSite: 'present', unknown",
      "falseJoint: 'not-done', unknown"
    })
    void are_there_when_found_and_not_where_nothing_moves(String finding, String expected) {
      CaseText text = Found.planned("deformity", "{day: 400, " + finding + "}");
      assertThat(Taken.of("false-joint", text)).startsWith(expected);
    }
  }

  @Nested
  class Defects {

    private static final CaseText PLAN = Found.planned("deformity", "{day: 200, defectMm: 0}");

    private static String told(String stage) {
      return Taken.of("defect-statement", PLAN.at("/plans/0/stages/0", stage));
    }

    @Test
    void are_not_in_question_where_nothing_is_cut_and_no_gap_is_left() {
      assertThat(told("{}")).isEqualTo("not-in-question fact");
    }

    @Test
    void are_told_by_levels_of_a_resection_or_gaps_at_the_end() {
      assertThat(told("{reduction: null, resection: [{fromMm: 170, toMm: 180}]}"))
          .isEqualTo("after-resection fact");
      assertThat(told("{infectionCare: {debridement: 'yes'}}")).isEqualTo("after-resection fact");
      assertThat(told("{reduction: {gapNearMm: 5, gapFarMm: 6}}"))
          .isEqualTo("after-resection fact");
    }

    @ParameterizedTest(name = "gap {0}, found {1}: {2}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            4.9              | 0                | not-in-question fact
            5                | 0                | after-resection fact
            {min: 4, max: 5} | 0                | after-resection fact
            0                | 5                | after-resection fact
            null             | 4.9              | not-in-question fact
            null             | 5                | before-only fact
            null             | {min: 4, max: 5} | before-only or not-in-question fact, ask plan-a/stage-1/resection
            null             | null             | not-in-question or not-stated fact, ask plan-a/stage-1/resection
            """)
    void are_in_question_from_five_millimetres_on(String gap, String found, String reads) {
      CaseText text =
          Found.planned("deformity", "{day: 200, defectMm: " + found + "}")
              .at("/plans/0/stages/0", "{reduction: null}")
              .at(
                  "/plans/0/stages/0",
                  "{reduction: {gapNearMm: " + gap + ", gapFarMm: " + gap + "}}");
      assertThat(Taken.of("defect-statement", text)).isEqualTo(reads);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            resection: [], infectionCare: {debridement: 'no'}   | not-in-question fact
            resection: [], infectionCare: null                  | before-only or not-in-question fact, ask op-2/resection
            resection: null, infectionCare: {debridement: 'no'} | before-only or not-in-question fact, ask op-2/resection
            resection: [], infectionCare: {debridement: 'unknown'} | before-only or not-in-question fact, ask op-2/resection
            """)
    void of_an_operation_of_the_past_are_out_of_question_only_where_it_says_that_nothing_was_cut(
        String said, String reads) {
      CaseText text =
          CaseText.bare()
              .with(
                  "{operations: [{id: 'op-1', day: 2}, {id: 'op-2', day: 50}], findings: [{day: 40,"
                      + " defectMm: 2}]}")
              .at("/operations/1", "{" + said + "}");
      assertThat(Taken.of("defect-statement", text, "op-2")).isEqualTo(reads);
    }

    @Test
    void are_told_only_as_they_were_before_where_the_film_is_all() {
      assertThat(told("{reduction: null, infectionCare: {debridement: 'yes'}}"))
          .isEqualTo("before-only fact");
    }

    @Test
    void may_be_in_question_where_the_past_does_not_say() {
      CaseText text =
          Found.since("").with("{operations: [{id: 'op-1', day: 2}, {id: 'op-2', day: 50}]}");
      assertThat(Taken.of("defect-statement", text, "op-2"))
          .isEqualTo("not-in-question or not-stated fact, ask op-2/resection");
    }
  }

  @Nested
  class Protection {

    private static String ended(CaseText text) {
      return Taken.of("protection-ended", text);
    }

    /** Load limited until day 42 after the operation of day 2. */
    @Test
    void ends_with_the_last_step_of_load() {
      assertThat(ended(Found.since("{day: 44}"))).isEqualTo("yes fact");
      assertThat(ended(Found.since("{day: 43}"))).isEqualTo("no fact");
      assertThat(ended(Found.since("{day: {min: 43, max: 45}}")))
          .isEqualTo("unknown, ask op-1/aftercare/load");
    }

    @Test
    void was_never_there_without_a_limit() {
      assertThat(ended(Found.since("{day: 44}").at("/operations/0", "{aftercare: {load: []}}")))
          .isEqualTo("yes fact");
      assertThat(ended(Found.since("{day: 44}").at("/operations/0", "{aftercare: null}")))
          .isEqualTo("unknown, ask op-1/aftercare/load");
    }

    @Test
    void ends_when_a_plan_only_takes_metal_out() {
      CaseText out =
          Found.planned("deformity", "{day: 43}")
              .at(
                  "/plans/0/stages/0",
                  "{fixation: [], removed: [{of: 'op-1/plate-1', holes: []}]}");
      assertThat(ended(out)).isEqualTo("yes fact");
    }
  }
}
