package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How patient, injury, operation and outcome are told in a few words. */
class SaidTest {

  private static String operation(String patch) {
    return Said.operation(CaseText.plated().at("/operations/0", patch).operation());
  }

  private static Optional<String> outcome(String outcome) {
    return Said.outcome(
        CaseText.plated().at("/operations/0", "{outcome: " + outcome + "}").operation());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ageYears: 40, sex: 'male'} | 40 years, male",
        "{ageYears: {min: 60, max: 65}, sex: 'other', weightKg: 80} | 60–65 years, 80 kg",
        "{ageYears: null, sex: null} | age not stated",
        "{demand: 'manual-work'} | '40 years, male, demand: manual work'"
      })
  void a_patient(String patient, String said) {
    assertThat(Said.patient(CaseText.plated().at("/patient", patient).file().patient()))
        .isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} | left tibia, transverse, closed, zone 179 to 181 mm",
        "{openGrade: 'iiib'} | left tibia, transverse, open, grade IIIB, zone 179 to 181 mm",
        "{pattern: null, openGrade: null, zone: null} | left tibia, pattern not stated"
      })
  void an_injury(String injury, String said) {
    assertThat(Said.injury(CaseText.plated().at("/injury", injury).file())).isEqualTo(said);
  }

  @Test
  void a_bone_whose_side_nobody_told() {
    assertThat(Said.injury(CaseText.plated().at("/bone", "{side: 'not-stated'}").file()))
        .startsWith("tibia, side not stated");
  }

  @Nested
  class An_operation {

    @Test
    void is_told_by_its_implants_its_concept_and_how_it_was_compressed() {
      assertThat(operation("{}"))
          .isEqualTo(
              "10-hole medial large fragment narrow plate, 6 screws; absolute stability;"
                  + " compressed by eccentric screws");
    }

    @Test
    void with_a_title_is_told_by_it_and_its_implants() {
      assertThat(operation("{title: 'Plating'}"))
          .isEqualTo("Plating; 10-hole medial plate, 6 screws");
    }

    @Test
    void says_what_was_put_in_and_taken_out() {
      assertThat(
              operation(
                  """
                  {concept: null, compression: {method: 'none'}, fixation: [],
                    biology: [{kind: 'autograft-cancellous', volumeMl: 20}, {kind: 'allograft'}],
                    removed: [{of: 'op-0/plate-1', holes: [1]}, {of: 'op-0/plate-1', holes: [2]}]}
                  """))
          .isEqualTo("autograft cancellous 20 mL; allograft; removed op-0/plate-1");
    }

    @Test
    void whose_implants_nobody_told_is_not_one_without_implants() {
      assertThat(operation("{fixation: null, concept: null, compression: null}"))
          .isEqualTo("implants not stated");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "kind: 'nail', outerMm: 10, bolts: [{end: 'near'}] | 10 mm nail, 1 bolt",
          "kind: 'nail', bolts: [{end: 'near'}, {end: 'far'}] | nail, 2 bolts",
          "kind: 'nail' | nail",
          "kind: 'external-fixator' | external fixator",
          "kind: 'lag-screw' | lag screw",
          "kind: 'cerclage' | cerclage",
          "kind: 'strut', where: 'onlay', fromMm: 150, toMm: 210 | onlay strut",
          "kind: 'plate' | plate",
          "kind: 'plate', screws: [{at: [1], type: 'cortical'}] | plate, 1 screw"
        })
    void names_each_implant(String implant, String said) {
      assertThat(
              operation(
                  "{concept: null, compression: null, fixation: [{id: 'i', " + implant + "}]}"))
          .isEqualTo(said);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{result: 'united', day: 200} | United by day 200",
        "{result: 'united', weeksAfter: 12} | United after 12 weeks",
        "{result: 'failed'} | Failed",
        "{result: 'failed', day: 90, mode: 'plate-broken-at-empty-hole', hole: 5}"
            + " | Failed by day 90: plate broken at empty hole (hole 5)",
        "{result: 'failed', mode: 'callus-line-open'} | Failed: callus, line open",
        "{result: 'failed', mode: 'no-union-metal-intact'} | Failed: no union, metal intact"
      })
  void an_outcome(String outcome, String said) {
    assertThat(outcome(outcome)).contains(said);
  }

  @Test
  void an_outcome_that_nobody_told_is_not_told() {
    assertThat(Said.outcome(CaseText.plated().operation())).isEmpty();
  }
}
