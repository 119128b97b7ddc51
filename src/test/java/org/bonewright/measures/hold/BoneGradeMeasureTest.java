package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoneGradeMeasureTest {

  private static CaseText quality(CaseText text, String value, String day) {
    return text.at(
        "/bone",
        "{quality: [{method: 'cortical-thickness', value: " + value + ", day: " + day + "}]}");
  }

  @Nested
  class Measured {

    @ParameterizedTest(name = "cortex {0} mm: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            2.9                   | poor fact
            3                     | reduced fact
            4                     | good fact
            {min: 2.8, max: 3.2}  | poor or reduced fact, ask bone/quality
            """)
    void is_the_grade_of_the_measurement(String value, String reads) {
      assertThat(Taken.of("bone-grade", quality(CaseText.plated(), value, "1"))).isEqualTo(reads);
    }

    @Test
    void after_the_operation_it_was_not_known_then() {
      CaseText later = quality(CaseText.plated(), "2.5", "200").redone("plate-bent");
      assertThat(Taken.of("bone-grade", later, "op-1")).isEqualTo("good assumed");
      assertThat(Taken.of("bone-grade", later, "plan-a")).isEqualTo("poor fact");
    }
  }

  @Nested
  class NotMeasured {

    private static final String OPEN = "good or poor or reduced assumed, ask bone/quality";

    private static CaseText unmeasured(CaseText text) {
      return text.at("/bone", "{quality: null}");
    }

    @Test
    void is_good_where_nothing_calls_for_a_measurement() {
      assertThat(Taken.of("bone-grade", unmeasured(CaseText.plated()))).isEqualTo("good assumed");
    }

    @ParameterizedTest(name = "age {0}: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            59                  | good assumed
            60                  | good or poor or reduced assumed, ask bone/quality
            {min: 55, max: 65}  | good or poor or reduced assumed, ask bone/quality
            null                | good or poor or reduced assumed, ask bone/quality
            """)
    void age_60_calls_for_one(String age, String reads) {
      CaseText text = unmeasured(CaseText.plated()).at("/patient", "{ageYears: " + age + "}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo(reads);
    }

    @Test
    void so_does_a_fall_from_standing_height() {
      CaseText text = unmeasured(CaseText.plated()).at("/injury", "{energy: 'standing-height'}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo(OPEN);
    }

    @Test
    void so_do_steroids_known_before_the_operation() {
      CaseText before =
          unmeasured(CaseText.plated()).with("{findings: [{day: 1, host: {drugs: ['steroid']}}]}");
      CaseText after =
          unmeasured(CaseText.plated()).with("{findings: [{day: 9, host: {drugs: ['steroid']}}]}");
      assertThat(Taken.of("bone-grade", before)).isEqualTo(OPEN);
      assertThat(Taken.of("bone-grade", after)).isEqualTo("good assumed");
    }

    @Test
    void so_does_an_earlier_operation() {
      assertThat(Taken.of("bone-grade", unmeasured(CaseText.plated().redone("plate-bent"))))
          .isEqualTo(OPEN);
    }

    @Test
    void so_do_more_than_six_months_at_rest_before_the_first_fixation() {
      CaseText late = unmeasured(CaseText.plated()).at("/operations/0", "{day: 200}");
      CaseText rested = late.with("{nonOperative: [{kind: 'cast', fromDay: 0, toDay: 190}]}");
      assertThat(Taken.of("bone-grade", rested)).isEqualTo(OPEN);
      assertThat(Taken.of("bone-grade", late)).isEqualTo("good assumed");
    }

    @Test
    void an_energy_that_is_not_stated_does_not_in_a_young_patient() {
      CaseText text = unmeasured(CaseText.plated()).at("/injury", "{energy: null}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo("good assumed");
    }

    @Test
    void nor_does_a_stage_that_did_what_it_was_for() {
      CaseText text =
          unmeasured(CaseText.plated().redone("plate-bent"))
              .at("/operations/0", "{outcome: {result: 'stage-done', mode: null}}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo("good assumed");
    }

    @Test
    void hounsfield_units_leave_every_grade_open() {
      CaseText text =
          CaseText.plated().at("/bone", "{quality: [{method: 'ct-hounsfield', value: 300}]}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo(OPEN);
    }

    @Test
    void hounsfield_units_measured_after_the_operation_were_no_hint_then() {
      CaseText text =
          CaseText.plated()
              .at("/bone", "{quality: [{method: 'ct-hounsfield', value: 300, day: 200}]}");
      assertThat(Taken.of("bone-grade", text)).isEqualTo("good assumed");
    }

    @Test
    void the_cortex_of_a_thin_bone_counts_as_no_measurement() {
      assertThat(Taken.of("bone-grade", CaseText.plated().at("/bone", "{name: 'radius'}")))
          .isEqualTo("good assumed");
    }
  }

  @Nested
  class StrippedScrews {

    private static CaseText stripped(String holes) {
      return CaseText.plated()
          .at(
              "/operations/0/fixation/0",
              "{screws: [{at: " + holes + ", type: 'cortical', state: 'stripped'}]}")
          .redone("plate-bent");
    }

    @Test
    void two_at_an_earlier_operation_show_poor_bone_against_any_measurement() {
      assertThat(Taken.of("bone-grade", stripped("[1, 3]"))).isEqualTo("poor fact");
    }

    @Test
    void one_shows_nothing() {
      assertThat(Taken.of("bone-grade", stripped("[1]"))).isEqualTo("good fact");
    }

    @Test
    void those_of_the_operation_itself_were_not_known_when_it_began() {
      assertThat(Taken.of("bone-grade", stripped("[1, 3]"), "op-1")).isEqualTo("good fact");
    }
  }
}
