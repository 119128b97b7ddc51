package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConfirmatorySignsTest {

  /** All five answered, none present. */
  private static final String CLEAN =
      "sinus: 'absent', woundBreakdown: 'absent', pus: 'absent',"
          + " samples: {taken: 5, sameOrganism: 0}, histology: 'negative'";

  private static CaseText signs(String change) {
    return CaseText.plated()
        .with("{findings: [{day: 1, infection: {" + CLEAN + "}}]}")
        .at("/findings/0/infection", "{" + change + "}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          sinus: 'absent'                                             | 0 fact
          sinus: 'present'                                            | 1 fact
          woundBreakdown: 'present'                                   | 1 fact
          pus: 'present'                                              | 1 fact
          samples: {taken: 5, sameOrganism: 2}                        | 1 fact
          samples: {taken: 5, sameOrganism: 1}                        | 0 fact
          samples: {taken: 2, sameOrganism: 2}                        | 1 fact
          histology: 'neutrophils-above-5'                            | 1 fact
          histology: 'organisms'                                      | 1 fact
          sinus: 'present', pus: 'present', histology: 'organisms'    | 3 fact
          # a test not done is an answer, a bedside sign not examined is open
          histology: 'not-done'                                       | 0 fact
          sinus: 'not-done'                                           | 0–1 fact, ask findings before op-1/sinus
          samples: {taken: 1, sameOrganism: null}                     | 0 fact
          # unknown or not recorded may be a sign or not
          sinus: 'unknown'                                            | 0–1 fact, ask findings before op-1/sinus
          histology: 'unknown', pus: 'present'                        | 1–2 fact, ask findings before op-1/histology
          samples: {taken: 3, sameOrganism: null}                     | 0–1 fact, ask findings before op-1/samples
          samples: {taken: 3, sameOrganism: {min: 1, max: 2}}         | 0–1 fact, ask findings before op-1/samples
          samples: null                                               | 0–1 fact, ask findings before op-1/samples
          """)
  void are_counted(String change, String reads) {
    assertThat(Taken.of("confirmatory-signs", signs(change))).isEqualTo(reads);
  }

  @Test
  void all_five_are_open_where_nothing_was_recorded() {
    assertThat(Taken.of("confirmatory-signs", CaseText.plated()))
        .isEqualTo(
            "0–5 fact, ask findings before op-1/sinus and findings before op-1/woundBreakdown"
                + " and findings before op-1/pus and findings before op-1/samples"
                + " and findings before op-1/histology");
  }

  @Test
  void are_named_or_said_to_be_none() {
    CaseText both = signs("pus: 'present', histology: 'organisms'");
    assertThat(working(both)).isEqualTo("pus, histology");
    assertThat(working(signs(""))).isEqualTo("none recorded");
  }

  private static String working(CaseText text) {
    return Taken.reading("confirmatory-signs", Taken.subject(text.file(), "op-1")).working();
  }

  @Nested
  class Timing {

    private static CaseText twice(String first, String second) {
      return signs("")
          .with(
              "{findings: [{day: 10, infection: {"
                  + CLEAN
                  + "}}, {day: 20, infection: {"
                  + first
                  + "}}, {day: 40, infection: {"
                  + second
                  + "}}]}")
          .at("/operations/0", "{day: 30}");
    }

    @Test
    void the_latest_answer_before_the_operation_counts() {
      assertThat(Taken.of("confirmatory-signs", twice("pus: 'present'", "pus: 'absent'")))
          .isEqualTo("1 fact");
    }

    @Test
    void a_later_answer_does_not_count() {
      assertThat(Taken.of("confirmatory-signs", twice("crpMgL: 4", "pus: 'present'")))
          .isEqualTo("0 fact");
    }

    @Test
    void a_question_not_asked_again_keeps_its_last_answer() {
      assertThat(Taken.of("confirmatory-signs", twice("sinus: 'present'", ""))).isEqualTo("1 fact");
    }

    @Test
    void a_sign_once_seen_counts_until_infection_was_treated_and_it_is_gone() {
      CaseText seen = twice("pus: 'present'", "").redone("plate-bent");
      CaseText gone =
          seen.with(
              "{findings: [{day: 1, infection: {pus: 'present', sinus: 'absent',"
                  + " woundBreakdown: 'absent', samples: {taken: 0}, histology: 'not-done'}},"
                  + " {day: 150, infection: {pus: 'absent'}}]}");
      assertThat(Taken.of("confirmatory-signs", gone)).isEqualTo("1 fact");
      assertThat(
              Taken.of(
                  "confirmatory-signs",
                  gone.at(
                      "/operations/0",
                      "{infectionCare: {debridement: 'yes', antibioticWeeks: 6}}")))
          .isEqualTo("0 fact");
    }

    /** Pus on one day, none on day 190, and an operation on day 100 that may have dealt with it. */
    private static String caredFor(int pusDay, String operation) {
      CaseText text =
          signs("")
              .redone("plate-bent")
              .at("/operations/0", "{day: 100}")
              .at("/operations/0", operation)
              .with(
                  "{findings: [{day: 1, infection: {"
                      + CLEAN
                      + "}}, {day: "
                      + pusDay
                      + ", infection: {pus: 'present'}}, {day: 190, infection: {pus: 'absent'}}]}");
      return Taken.of("confirmatory-signs", text);
    }

    @Test
    void an_operation_clears_what_was_seen_up_to_its_own_day_and_nothing_later() {
      String care = "{infectionCare: {debridement: 'yes', antibioticWeeks: 6}}";
      assertThat(caredFor(99, care)).isEqualTo("0 fact");
      assertThat(caredFor(100, care)).isEqualTo("0 fact");
      assertThat(caredFor(101, care)).isEqualTo("1 fact");
    }

    @Test
    void an_operation_without_a_day_clears_nothing() {
      assertThat(
              caredFor(99, "{day: null, infectionCare: {debridement: 'yes', antibioticWeeks: 6}}"))
          .isEqualTo("1 fact");
    }

    @Test
    void debridement_without_antibiotics_that_were_surely_given_clears_nothing() {
      assertThat(caredFor(99, "{infectionCare: {debridement: 'yes', antibioticWeeks: 0}}"))
          .isEqualTo("1 fact");
      assertThat(
              caredFor(
                  99, "{infectionCare: {debridement: 'yes', antibioticWeeks: {min: 0, max: 6}}}"))
          .isEqualTo("1 fact");
    }

    @Test
    void a_failure_by_infection_counts_until_an_operation_deals_with_it() {
      CaseText text =
          signs("")
              .redone("infection")
              .with(
                  "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', infectionCare: {debridement:"
                      + " 'yes', antibioticWeeks: 6}}, {id: 'stage-2'}]}]}");
      assertThat(Taken.of("confirmatory-signs", text, "plan-a/stage-1")).isEqualTo("1 fact");
      assertThat(Taken.of("confirmatory-signs", text, "plan-a/stage-2")).isEqualTo("0 fact");
    }

    @Test
    void a_failure_by_infection_counts() {
      assertThat(Taken.of("confirmatory-signs", signs("pus: 'absent'").redone("infection")))
          .isEqualTo("1 fact");
    }

    @Test
    void no_samples_taken_later_do_not_undo_a_culture() {
      CaseText text =
          twice("samples: {taken: 5, sameOrganism: 4}", "samples: {taken: 0}").redone("plate-bent");
      assertThat(Taken.of("confirmatory-signs", text)).isEqualTo("1 fact");
    }

    @Test
    void a_plan_sees_every_finding() {
      CaseText text = twice("", "pus: 'present'").redone("plate-bent");
      assertThat(Taken.of("confirmatory-signs", text)).isEqualTo("1 fact");
    }

    @Test
    void a_plan_asks_in_the_findings_to_come() {
      CaseText text = signs("sinus: 'unknown'").redone("plate-bent");
      assertThat(Taken.of("confirmatory-signs", text))
          .isEqualTo("0–1 fact, ask findings/infection/sinus");
    }

    @Test
    void what_was_seen_on_a_later_day_is_not_known_to_an_operation_without_a_day() {
      CaseText text = signs("pus: 'present'").at("/operations/0", "{day: null}");
      assertThat(Taken.of("confirmatory-signs", text)).startsWith("0–5 fact");
    }
  }
}
