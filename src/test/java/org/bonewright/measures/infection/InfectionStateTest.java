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
  void history_alone_heightens_it() {
    CaseText open = signs("plate-bent", "").with("{injury: {openGrade: 'ii'}}");
    assertThat(state(open)).isEqualTo("heightened fact");
    assertThat(state(open.with("{injury: {openGrade: 'i'}}"))).isEqualTo("none fact");
  }

  @Test
  void a_closed_injury_without_an_earlier_implant_has_none() {
    assertThat(state(CaseText.plated())).isEqualTo("none fact");
  }

  @Test
  void work_up_needs_a_fresh_marker_and_negative_samples() {
    CaseText text = signs("plate-bent", "");
    assertThat(Taken.of("infection-worked-up", text)).isEqualTo("yes fact");
    assertThat(
            Taken.of(
                "infection-worked-up", signs("plate-bent", "samples: {taken: 1, sameOrganism: 0}")))
        .isEqualTo("no fact");
    // last CRP on day 210, latest finding on day 241: 31 days
    CaseText old =
        text.with("{findings: [{day: 210, infection: {" + CLEAN + "}}, {day: 241, pain: 2}]}");
    assertThat(Taken.of("infection-worked-up", old)).isEqualTo("no fact");
  }

  @Test
  void or_sampling_with_a_result_path_ahead_of_graft_and_metal() {
    CaseText text =
        signs("plate-bent", "samples: {taken: 0}")
            .at(
                "/plans/0",
                "{resultPath: 'team', stages: [{id: 'a', samples: {deepSamples: 5}}, {id: 'b',"
                    + " biology: [{kind: 'reamer-graft'}]}]}");
    assertThat(Taken.of("infection-worked-up", text)).isEqualTo("yes fact");
    assertThat(Taken.of("infection-worked-up", text.without("/plans/0/resultPath")))
        .isEqualTo("no fact");
    assertThat(
            Taken.of(
                "infection-worked-up",
                text.at("/plans/0/stages/0", "{biology: [{kind: 'allograft'}]}")))
        .isEqualTo("no fact");
  }
}
