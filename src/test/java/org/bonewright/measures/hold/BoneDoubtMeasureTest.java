package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plated patient is 40, had a high-energy injury and is operated on day 2. */
class BoneDoubtMeasureTest {

  private static String doubt(CaseText text) {
    return Taken.of("bone-doubt", text);
  }

  private static CaseText drugs(String drugs) {
    return CaseText.plated().with("{findings: [{day: 1, host: {drugs: " + drugs + "}}]}");
  }

  @Test
  void a_young_patient_after_a_high_energy_injury_gives_none() {
    assertThat(doubt(CaseText.plated())).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "age {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          59                  | no fact
          60                  | yes fact
          {min: 55, max: 65}  | no or yes fact, ask patient/ageYears
          null                | no or yes fact, ask patient/ageYears
          """)
  void age_60_gives_one_and_an_unstated_age_leaves_it_open(String age, String reads) {
    assertThat(doubt(CaseText.plated().at("/patient", "{ageYears: " + age + "}"))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "energy {0}: {1}")
  @CsvSource({"'''standing-height''', yes fact", "'''low''', no fact", "null, no fact"})
  void a_fall_from_standing_height_gives_one_an_unstated_energy_none(String energy, String reads) {
    CaseText text = CaseText.plated().at("/injury", "{energy: " + energy + "}");
    assertThat(doubt(text)).isEqualTo(reads);
  }

  @Test
  void an_unstated_energy_beside_a_drug_for_weak_bone_leaves_it_open() {
    assertThat(doubt(drugs("['bisphosphonate']"))).isEqualTo("no fact");
    assertThat(doubt(drugs("['bisphosphonate']").at("/injury", "{energy: null}")))
        .isEqualTo("no or yes fact, ask injury/energy");
    assertThat(doubt(drugs("['nsaid']").at("/injury", "{energy: null}"))).isEqualTo("no fact");
  }

  @Test
  void steroids_give_one() {
    assertThat(doubt(drugs("['steroid']"))).isEqualTo("yes fact");
  }

  @Test
  void the_latest_list_of_drugs_counts_also_where_a_later_finding_has_none() {
    CaseText text =
        CaseText.plated()
            .with("{findings: [{day: 0, host: {drugs: ['steroid']}}, {day: 1, host: {asa: 2}}]}");
    assertThat(doubt(text)).isEqualTo("yes fact");
  }

  @ParameterizedTest(name = "{0} from day 1, to day {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          brace       | 184                   | no fact
          brace       | 185                   | yes fact
          cast        | 185                   | yes fact
          traction    | 185                   | yes fact
          observation | 185                   | no fact
          brace       | {min: 180, max: 190}  | no or yes fact, ask nonOperative/toDay
          brace       | null                  | no or yes fact, ask nonOperative/toDay
          """)
  void a_rest_of_more_than_six_months_before_the_first_fixation_gives_one(
      String kind, String until, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{day: 240}")
            .with("{nonOperative: [{kind: '%s', fromDay: 1}]}".formatted(kind))
            .at("/nonOperative/0", "{toDay: " + until + "}");
    assertThat(doubt(text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "begun on day {0}, operated on day {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # at most up to the operation
          1   | 184  | no fact
          1   | 185  | no or yes fact, ask nonOperative/toDay
          """)
  void a_rest_whose_end_is_not_told_lasted_up_to_the_operation_at_most(
      int from, String operated, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{day: " + operated + "}")
            .with("{nonOperative: [{kind: 'brace', fromDay: %d}]}".formatted(from))
            .with("{findings: [{day: 1, pain: 2}]}");
    assertThat(doubt(text)).isEqualTo(reads);
  }

  @Test
  void a_rest_after_the_operation_gives_none() {
    CaseText text =
        CaseText.plated().with("{nonOperative: [{kind: 'brace', fromDay: 3, toDay: 300}]}");
    assertThat(doubt(text)).isEqualTo("no fact");
  }

  @Test
  void six_months_that_merely_passed_give_none() {
    assertThat(doubt(CaseText.plated().at("/operations/0", "{day: 240}"))).isEqualTo("no fact");
  }

  @Test
  void a_plan_after_six_months_in_a_brace_gives_one() {
    String plan = "operations: [], plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]";
    String brace = "nonOperative: [{kind: 'brace', fromDay: 1, toDay: 195}]";
    CaseText late = CaseText.plated().with("{" + plan + ", " + brace + ", findings: [{day: 200}]}");
    CaseText walking = CaseText.plated().with("{" + plan + ", findings: [{day: 200}]}");
    assertThat(doubt(late)).isEqualTo("yes fact");
    assertThat(doubt(walking)).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "op-1 {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {result: 'failed', mode: 'plate-bent'}  | yes fact
          {result: 'stage-done'}                  | no fact
          null                                    | no or yes fact, ask op-1/outcome/result
          """)
  void an_earlier_fixation_meant_to_last_gives_one(String outcome, String reads) {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/operations/0", "{outcome: null}")
            .at("/operations/0", "{outcome: " + outcome + "}");
    assertThat(doubt(text)).isEqualTo(reads);
  }

  @Test
  void an_earlier_operation_that_put_nothing_in_gives_none() {
    CaseText text = CaseText.plated().redone("plate-bent").at("/operations/0", "{fixation: []}");
    assertThat(doubt(text)).isEqualTo("no fact");
  }
}
