package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfectionStateTest {

  private static final String CLEAN =
      "sinus: 'absent', woundBreakdown: 'absent', pus: 'absent', fever: 'absent', localSigns:"
          + " 'absent', discharge: 'absent', jointEffusion: 'absent', crpMgL: 4, esrMmH: 10,"
          + " whiteCellsG9L: 6, lysis: 'absent', sequestrum: 'absent', periostealBone: 'absent',"
          + " samples: {taken: 5, sameOrganism: 0}, histology: 'negative'";

  private static CaseText signs(String mode, String change) {
    return CaseText.plated()
        .redone(mode)
        .with("{findings: [{day: 210, infection: {" + CLEAN + "}}]}")
        .at("/findings/0/infection", "{" + change + "}");
  }

  private static String state(CaseText text) {
    return Taken.of("infection-state", text);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          pus: 'absent'                             | none fact
          fever: 'not-done'                         | none fact
          sinus: 'present'                          | confirmed fact
          samples: {taken: 5, sameOrganism: 2}      | confirmed fact
          fever: 'present'                          | suspected fact
          localSigns: 'present'                     | suspected fact
          discharge: 'present'                      | suspected fact
          jointEffusion: 'present'                  | suspected fact
          sequestrum: 'present'                     | suspected fact
          periostealBone: 'present'                 | suspected fact
          crpMgL: 10                                | none fact
          crpMgL: 11                                | suspected fact
          crpMgL: {min: 6, max: 10}                 | none fact
          crpMgL: {min: 10, max: 11}                | none or suspected fact, ask findings/infection/crpMgL
          lysis: 'unknown'                          | none or suspected fact, ask findings/infection/lysis
          samples: {taken: 0}                       | none fact
          samples: {taken: 1, sameOrganism: 1}      | suspected fact
          samples: {taken: 1, sameOrganism: null}   | none or suspected fact, ask findings/infection/samples
          samples: {taken: 1, sameOrganism: {min: 0, max: 1}} | none or suspected fact, ask findings/infection/samples
          samples: null, pus: 'present'             | confirmed fact
          esrMmH: 31                                | suspected fact
          whiteCellsG9L: 12                         | suspected fact
          samples: {taken: 5, sameOrganism: 1}      | suspected fact
          fever: 'unknown'                          | none or suspected fact, ask findings/infection/fever
          sinus: 'unknown', fever: 'present'        | confirmed or suspected fact, ask findings/infection/sinus
          """)
  void is_read_from_the_signs(String change, String reads) {
    assertThat(state(signs("plate-bent", change))).isEqualTo(reads);
  }

  @Test
  void lysis_is_a_sign_unless_a_mechanical_failure_explains_it() {
    assertThat(state(signs("screws-pulled-out-in-sequence", "lysis: 'present'")))
        .isEqualTo("none fact");
    assertThat(state(signs("all-screws-lucent", "lysis: 'present'"))).isEqualTo("suspected fact");
  }

  @Test
  void markers_of_the_first_two_weeks_are_no_sign() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .with(
                "{findings: [{day: 10, infection: {crpMgL: 90}}, {day: 210, infection: {"
                    + CLEAN
                    + "}}]}");
    assertThat(state(text)).isEqualTo("none fact");
    assertThat(state(text.without("/findings/1/infection/crpMgL")))
        .isEqualTo("none or suspected fact, ask findings/infection/crpMgL");
  }

  @Test
  void lysis_after_a_failure_whose_mode_is_not_told_leaves_it_open() {
    CaseText text =
        signs("plate-bent", "lysis: 'present'").at("/operations/0/outcome", "{mode: null}");
    assertThat(state(text)).isEqualTo("none or suspected fact, ask findings/infection/lysis");
  }

  @Test
  void a_fixator_before_heightens_it() {
    CaseText pins =
        signs("plate-bent", "")
            .at("/operations/0", "{fixation: [{id: 'f', kind: 'external-fixator'}]}");
    assertThat(state(pins)).isEqualTo("heightened fact");
  }

  @Test
  void an_operation_that_does_not_say_what_it_put_in_may_have_used_a_fixator() {
    CaseText silent = signs("plate-bent", "").at("/operations/0", "{fixation: null}");
    assertThat(state(silent)).isEqualTo("heightened or none fact, ask operations/fixation");
  }

  @Test
  void a_grade_of_the_injury_that_is_not_told_may_heighten_it() {
    CaseText silent = signs("plate-bent", "").with("{injury: {openGrade: null}}");
    assertThat(state(silent)).isEqualTo("heightened or none fact, ask injury/openGrade");
  }

  @Test
  void a_second_operation_before_heightens_it() {
    CaseText text =
        signs("plate-bent", "")
            .with("{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}, {id: 'stage-2'}]}]}");
    assertThat(Taken.of("infection-state", text, "plan-a/stage-1")).isEqualTo("none fact");
    assertThat(Taken.of("infection-state", text, "plan-a/stage-2")).isEqualTo("heightened fact");
  }

  @Test
  void discharge_that_has_dried_up_heightens_it() {
    CaseText text =
        signs("plate-bent", "")
            .with(
                "{findings: [{day: 60, infection: {discharge: 'present'}}, {day: 210, infection: {"
                    + CLEAN
                    + "}}]}");
    assertThat(state(text)).isEqualTo("heightened fact");
  }

  @Test
  void history_alone_heightens_it() {
    CaseText open = signs("plate-bent", "").with("{injury: {openGrade: 'ii'}}");
    assertThat(state(open)).isEqualTo("heightened fact");
    assertThat(state(open.with("{injury: {openGrade: 'i'}}"))).isEqualTo("none fact");
  }

  @Test
  void a_closed_injury_without_an_earlier_implant_has_none() {
    assertThat(state(CaseText.plated())).isEqualTo("none fact");
  }
}
