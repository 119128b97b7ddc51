package org.bonewright.measures.limb;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tibia plated on day 2 and failed by day 200; the plan does the same once more. */
class SoftTissueMeasuresTest {

  private static CaseText planned(String operation, String stage) {
    return CaseText.plated()
        .redone("plate-bent")
        .at("/operations/0", operation)
        .at("/plans/0/stages/0", stage);
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          ankle-brachial-index | ankleBrachialIndex: 0.8                    | 0.8 fact
          ankle-brachial-index | ankleBrachialIndex: {min: 0.8, max: 1}     | 0.8–1 fact, ask findings/ankleBrachialIndex
          ankle-brachial-index | pain: 3                                    | unknown, ask findings/ankleBrachialIndex
          pulses               | pulses: 'present'                          | present fact
          pulses               | pulses: 'not-done'                         | not-done fact
          pulses               | pulses: 'unknown'                          | unknown, ask findings/pulses
          pulses               | pain: 3                                    | unknown, ask findings/pulses
          skin                 | skin: 'sound-scar'                         | sound-scar fact
          skin                 | pain: 3                                    | unknown, ask findings/skin
          """)
  void read_what_was_last_found(String measure, String finding, String reads) {
    CaseText text = CaseText.plated().at("", "{findings: [{day: 1, " + finding + "}]}");
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: done {1}, planned {2} reads {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          cover-settled   | {} | {infectionCare: {softTissueCover: 'yes'}}     | yes fact
          cover-settled   | {} | {infectionCare: {softTissueCover: 'no'}}      | no fact
          cover-settled   | {} | {infectionCare: {softTissueCover: 'unknown'}} | unknown, ask plan-a/stage-1/infectionCare/softTissueCover
          cover-settled   | {} | {}                                            | no fact
          incised-before  | {approach: 'medial'} | {}     | yes fact
          incised-before  | {approach: 'closed'} | {}     | no fact
          incised-before  | {}                   | {}     | no or yes fact, ask op-1/approach
          fixations-before | {}                  | {}     | 1 fact
          fixations-before | {fixation: []}      | {}     | 0 fact
          fixations-before | {fixation: null}    | {}     | 0–1 fact, ask operations/fixation
          skin-bridge     | {approach: 'medial'} | {approach: 'lateral', skinBridgeMm: 60}  | 60 fact
          skin-bridge     | {approach: 'medial'} | {approach: 'lateral', skinBridgeMm: {min: 60, max: 80}} | 60–80 fact, ask plan-a/stage-1/skinBridgeMm
          skin-bridge     | {approach: 'medial'} | {approach: 'lateral'}                    | unknown, ask plan-a/stage-1/skinBridgeMm
          skin-bridge     | {approach: 'medial'} | {}                                       | unknown, ask plan-a/stage-1/skinBridgeMm
          skin-bridge     | {approach: 'medial'} | {approach: 'lateral', skinBridgeMm: 0}   | none: an old incision is used again, or none is made
          skin-bridge     | {approach: 'medial'} | {approach: 'medial'}                     | none: an old incision is used again, or none is made
          skin-bridge     | {approach: 'medial'} | {approach: 'closed'}                     | none: an old incision is used again, or none is made
          skin-bridge     | {approach: 'closed'} | {approach: 'lateral'}                    | none: no old incision
          """)
  void read_old_incisions_and_the_new_one(String measure, String done, String stage, String reads) {
    assertThat(Taken.of(measure, planned(done, stage))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} of an operation of the past: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          cover-settled    | {}                                       | unknown, ask op-1/infectionCare/softTissueCover
          cover-settled    | {infectionCare: {softTissueCover: 'no'}} | no fact
          incised-before   | {approach: 'medial'}                     | no fact
          fixations-before | {}                                       | 0 fact
          skin-bridge      | {approach: 'medial'}                     | none: no old incision
          """)
  void take_nothing_unsaid_for_not_done_in_the_past(
      String measure, String operation, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", operation);
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "stripped {0}, then {1}, found on day {2}: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # day 190 less day 2 is 188, within a year; day 400 less day 2 is 398, beyond it
          {strippedPercent: 40} | {strippedPercent: 30} | 190 | 70 fact
          {strippedPercent: 40} | {strippedPercent: 30} | 367 | 70 fact
          {strippedPercent: 40} | {strippedPercent: 30} | 368 | 30 fact
          {strippedPercent: 70} | {strippedPercent: 50} | 190 | 100 fact
          {strippedPercent: 40} | {}                    | 190 | 40–100 fact, ask stage-1/strippedPercent
          {}                    | {strippedPercent: 30} | 190 | 30–100 fact, ask op-1/strippedPercent
          {}                    | {strippedPercent: 30} | 400 | 30 fact
          {strippedPercent: {min: 20, max: 40}} | {strippedPercent: 30} | 190 | 50–70 fact, ask op-1/strippedPercent
          # from 350 to 390 days ago
          {strippedPercent: 40, day: {min: 0, max: 40}} | {strippedPercent: 30} | 390 | 30–70 fact, ask op-1/strippedPercent
          """)
  void add_up_what_a_year_has_stripped(String done, String stage, int day, String reads) {
    CaseText text = planned(done, stage).at("", "{findings: [{day: " + day + ", pain: 3}]}");
    assertThat(Taken.of("stripped-in-a-year", text)).isEqualTo(reads);
  }

  @Test
  void count_every_stage_of_a_plan_though_it_has_no_day() {
    CaseText text =
        planned("{strippedPercent: 20}", "{}")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', strippedPercent: 40}, {id: 'stage-2', strippedPercent: 30}]}")
            .at("", "{findings: [{day: 400, pain: 3}]}");

    assertThat(Taken.of("stripped-in-a-year", text, "plan-a/stage-1")).isEqualTo("40 fact");
    assertThat(Taken.of("stripped-in-a-year", text, "plan-a/stage-2")).isEqualTo("70 fact");
    assertThat(Taken.of("stripped-in-a-year", text, "plan-a")).isEqualTo("70 fact");
  }

  @ParameterizedTest(name = "{0}, found {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {bone: {name: 'tibia'}}    | {}                                                           | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', host: {diabetes: 'no', smoking: 'stopped'}} | no fact
          {bone: {name: 'humerus'}, patient: {ageYears: 70}}  | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | no fact
          {bone: {name: 'humerus'}, injury: {openGrade: 'i'}} | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', host: {diabetes: 'no', smoking: 'current'}} | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', host: {diabetes: 'yes', smoking: 'never'}}  | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'open', host: {diabetes: 'no', smoking: 'never'}}     | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', infection: {discharge: 'present'}, host: {diabetes: 'no', smoking: 'never'}} | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', infection: {sinus: 'present'}, host: {diabetes: 'no', smoking: 'never'}} | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', infection: {woundBreakdown: 'present'}, host: {diabetes: 'no', smoking: 'never'}} | yes fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', infection: {discharge: 'absent', sinus: 'not-done'}, host: {diabetes: 'no', smoking: 'never'}} | no fact
          {bone: {name: 'humerus'}}  | {skin: 'intact', host: {diabetes: 'unknown', smoking: 'never'}} | no or yes fact, ask findings/host/diabetes
          {bone: {name: 'humerus'}}  | {skin: 'intact', host: {diabetes: 'no', smoking: 'unknown'}} | no or yes fact, ask findings/host/smoking
          {bone: {name: 'humerus'}}  | {host: {smoking: 'never'}} | no or yes fact, ask findings/skin and findings/host/diabetes
          {bone: {name: 'femur'}, patient: {ageYears: 60}}    | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | yes fact
          {bone: {name: 'femur'}, patient: {ageYears: 59}}    | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | no fact
          {bone: {name: 'femur'}, patient: {ageYears: {min: 55, max: 60}}} | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | no or yes fact, ask patient/ageYears
          {bone: {name: 'femur'}, patient: {ageYears: {min: 55, max: 65}}} | {skin: 'intact', host: {diabetes: 'no', smoking: 'never'}} | no or yes fact, ask patient/ageYears
          """)
  void find_a_reason_to_look_at_skin_and_blood_flow(String file, String found, String reads) {
    CaseText text =
        CaseText.plated().with(file).with("{findings: [{day: 1}]}").at("/findings/0", found);
    assertThat(Taken.of("limb-at-risk", text)).isEqualTo(reads);
  }

  @Test
  void a_wound_that_discharged_counts_until_it_was_looked_at_again() {
    String clear = "host: {diabetes: 'no', smoking: 'never'}, skin: 'intact'";
    String twice =
        "{findings: [{day: 1, infection: {discharge: 'present'}, %s}, {day: 2, infection: {%s}}]}";
    CaseText text = CaseText.plated().with("{bone: {name: 'humerus'}}");
    assertThat(Taken.of("limb-at-risk", text.with(twice.formatted(clear, "crpMgL: 4"))))
        .isEqualTo("yes fact");
    assertThat(Taken.of("limb-at-risk", text.with(twice.formatted(clear, "discharge: 'absent'"))))
        .isEqualTo("no fact");
  }

  @Test
  void an_operation_without_a_day_may_have_stripped_within_the_year() {
    CaseText text =
        planned("{strippedPercent: 40, day: null}", "{strippedPercent: 30}")
            .at("", "{findings: [{day: 190, pain: 3}]}");
    assertThat(Taken.of("stripped-in-a-year", text))
        .isEqualTo("30–70 fact, ask op-1/strippedPercent");
    assertThat(
            Taken.reading("stripped-in-a-year", Taken.subject(text.file(), "plan-a"))
                .missing()
                .get(0)
                .question())
        .isEqualTo("What share of the circumference was stripped in op-1, and when?");
  }

  @Test
  void a_plan_without_findings_counts_back_from_the_last_operation() {
    CaseText text = planned("{strippedPercent: 40}", "{strippedPercent: 30}");
    assertThat(Taken.of("stripped-in-a-year", text.with("{findings: []}"))).isEqualTo("70 fact");
  }

  @Test
  void an_operation_of_the_past_counts_back_from_its_own_day() {
    String second =
        "],\"plans\"".replace("]", ",{\"id\":\"op-2\",\"day\":%d,\"strippedPercent\":30}]");
    String text = planned("{strippedPercent: 40}", "{}").toString();
    CaseText within = CaseText.of(text.replace("],\"plans\"", second.formatted(367)));
    CaseText beyond = CaseText.of(text.replace("],\"plans\"", second.formatted(368)));
    assertThat(Taken.of("stripped-in-a-year", within, "op-2")).isEqualTo("70 fact");
    assertThat(Taken.of("stripped-in-a-year", beyond, "op-2")).isEqualTo("30 fact");
  }
}
