package org.bonewright.measures.host;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The operation is on day 2; what was found on day 1 was known, what was found on day 9 was not.
 */
class HostMeasuresTest {

  private static CaseText host(String host) {
    return CaseText.plated().at("", "{findings: [{day: 1, host: " + host + "}]}");
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          vitamin-d            | {vitaminDNgMl: 18}                   | 18 fact
          vitamin-d            | {}                                   | unknown, ask findings/host/vitaminDNgMl
          albumin              | {albuminGL: {min: 30, max: 33}}      | 30–33 fact, ask findings/host/albuminGL
          hba1c                | {hba1cPercent: 8.1}                  | 8.1 fact
          smoking              | {smoking: 'current'}                 | current fact
          smoking              | {smoking: 'unknown'}                 | unknown, ask findings/host/smoking
          diabetes             | {diabetes: 'no'}                     | no fact
          diabetes             | {diabetes: 'unknown'}                | unknown, ask findings/host/diabetes
          bone-slowing-drug    | {drugs: ['nsaid', 'anticoagulant']}  | yes fact
          bone-slowing-drug    | {drugs: ['bisphosphonate']}          | no fact
          bone-slowing-drug    | {drugs: []}                          | no fact
          bone-slowing-drug    | {}                                   | unknown, ask findings/host/drugs
          antiresorptive-drug  | {drugs: ['denosumab']}               | yes fact
          antiresorptive-drug  | {drugs: ['steroid']}                 | no fact
          smoke-free-days      | {smoking: 'never'}                   | none: not one who stopped
          smoke-free-days      | {smoking: 'stopped'}                 | unknown, ask findings/host/smokingStoppedDay
          smoke-free-days      | {smoking: 'stopped', smokingStoppedDay: 0} | 2 fact
          """)
  void read_what_was_known_before(String measure, String host, String reads) {
    assertThat(Taken.of(measure, host(host))).isEqualTo(reads);
  }

  @Test
  void do_not_know_what_was_found_later() {
    CaseText later = CaseText.plated().at("", "{findings: [{day: 9, host: {vitaminDNgMl: 18}}]}");
    assertThat(Taken.of("vitamin-d", later)).startsWith("unknown");
  }

  @ParameterizedTest(name = "patient {0} reads {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 45 / 1.6² = 17.6; 70 / 1.8² = 21.6
          {ageYears: 40, heightCm: 180, weightKg: 70}               | no fact
          {ageYears: 70, heightCm: 180, weightKg: 70}               | yes fact
          {ageYears: 40, heightCm: 160, weightKg: 45}               | yes fact
          {ageYears: {min: 60, max: 75}}                            | no or yes fact, ask patient/ageYears
          {ageYears: null}                                          | no or yes fact, ask patient/ageYears
          {ageYears: {min: 60, max: 70}}                            | no or yes fact, ask patient/ageYears
          {ageYears: {min: 60, max: 69}}                            | no fact
          # 74 / 2² = 18.5
          {ageYears: 40, heightCm: 200, weightKg: 74}               | no fact
          {ageYears: 40, heightCm: 200, weightKg: 73}               | yes fact
          {ageYears: 40, heightCm: 200, weightKg: {min: 73, max: 74}} | no or yes fact, ask patient/weightKg
          {ageYears: 40, heightCm: {min: 190, max: 201}, weightKg: 74} | no or yes fact, ask patient/weightKg
          {ageYears: null, heightCm: 200, weightKg: {min: 73, max: 74}} | no or yes fact, ask patient/ageYears and patient/weightKg
          """)
  void find_a_reason_to_look_at_nutrition(String patient, String reads) {
    assertThat(Taken.of("malnutrition-risk", CaseText.plated().at("/patient", patient)))
        .isEqualTo(reads);
  }

  @Test
  void two_operations_before_are_a_reason_to_look_at_nutrition() {
    CaseText text = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of("malnutrition-risk", text)).isEqualTo("no fact");
    CaseText twice =
        CaseText.of(
            text.toString().replace("],\"plans\"", ",{\"id\":\"op-2\",\"day\":230}],\"plans\""));
    assertThat(Taken.of("malnutrition-risk", twice, "op-2")).isEqualTo("no fact");
    assertThat(Taken.of("malnutrition-risk", twice)).isEqualTo("yes fact");
  }

  @Test
  void days_without_smoking_are_a_range_where_either_day_is_one() {
    CaseText text = host("{smoking: 'stopped', smokingStoppedDay: {min: 0, max: 1}}");
    assertThat(Taken.of("smoke-free-days", text))
        .isEqualTo("1–2 fact, ask findings/host/smokingStoppedDay");
    assertThat(Taken.of("smoke-free-days", text.at("/operations/0", "{day: {min: 2, max: 4}}")))
        .isEqualTo("1–4 fact, ask findings/host/smokingStoppedDay");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "vitamin-d, 'What is the 25-hydroxy vitamin D, in ng/mL?'",
    "albumin, 'What is the albumin, in g/L?'",
    "hba1c, 'What is the long-term blood sugar (HbA1c), in percent?'",
    "radiation-dose, 'Was the site irradiated, and with how many Gy (0 for not)?'",
    "smoking, 'Does the patient smoke: never, stopped, current?'",
    "diabetes, Has the patient diabetes?",
    "tumour-suspected, Is there any suspicion of a tumour at the site?"
  })
  void ask_for_their_own_value_with_its_unit(String measure, String question) {
    assertThat(
            Taken.reading(measure, Taken.subject(host("{}").file(), "op-1"))
                .missing()
                .get(0)
                .question())
        .isEqualTo(question);
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          radiation-dose   | radiationGy: 60               | 60 fact
          radiation-dose   | pain: 3                       | unknown, ask findings/radiationGy
          tumour-suspected | tumourSuspected: 'present'    | yes fact
          tumour-suspected | tumourSuspected: 'absent'     | no fact
          tumour-suspected | tumourSuspected: 'not-done'   | unknown, ask findings/tumourSuspected
          tumour-suspected | tumourSuspected: 'unknown'    | unknown, ask findings/tumourSuspected
          """)
  void read_what_was_found_at_the_site(String measure, String finding, String reads) {
    CaseText text = CaseText.plated().at("", "{findings: [{day: 1, " + finding + "}]}");
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }
}
