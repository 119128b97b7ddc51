package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GraftKindsTest {

  private static CaseText with(String biology) {
    return CaseText.plated().at("/operations/0", "{biology: " + biology + "}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          []                                          | nothing fact    | 0 fact | no fact  | no fact
          [{kind: 'spacer'}]                          | nothing fact    | 0 fact | no fact  | no fact
          [{kind: 'autograft-cancellous'}]            | living fact     | 1 fact | yes fact | yes fact
          [{kind: 'reamer-graft'}]                    | living fact     | 1 fact | no fact  | yes fact
          [{kind: 'decortication'}]                   | living fact     | 1 fact | no fact  | no fact
          [{kind: 'substitute'}]                      | substitute fact | 1 fact | yes fact | no fact
          [{kind: 'allograft'}, {kind: 'marrow'}]     | mixed fact      | 2 fact | yes fact | no fact
          """)
  void are_told_apart(
      String biology, String makeup, String steps, String broughtIn, String cancellous) {
    assertThat(Taken.of("graft-makeup", with(biology))).isEqualTo(makeup);
    assertThat(Taken.of("biology-steps", with(biology))).isEqualTo(steps);
    assertThat(Taken.of("graft-brought-in", with(biology))).isEqualTo(broughtIn);
    assertThat(Taken.of("cancellous-graft", with(biology))).isEqualTo(cancellous);
  }

  @Test
  void are_asked_of_the_past_and_are_not_planned_where_a_plan_is_silent() {
    CaseText past = CaseText.plated().at("/operations/0", "{biology: null}");
    assertThat(Taken.of("graft-makeup", past)).isEqualTo("unknown, ask op-1/biology");
    assertThat(Taken.of("graft-makeup", past.redone("plate-bent"))).isEqualTo("nothing fact");
  }

  @Test
  void transport_and_a_strut_of_own_bone_are_steps_for_biology_too() {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{transport: {mmPerDay: 1}, fixation: [{id: 'strut-1', kind: 'strut',"
                    + " where: 'onlay', origin: 'autograft', fromMm: 150, toMm: 210}]}");
    assertThat(Taken.of("biology-steps", text)).isEqualTo("2 fact");
  }

  @Test
  void a_strut_of_foreign_or_unknown_bone_is_no_step_for_biology() {
    String strut =
        "{fixation: [{id: 'strut-1', kind: 'strut', where: 'onlay', fromMm: 150, toMm: 210%s}]}";
    for (String origin : new String[] {"", ", origin: 'allograft'"}) {
      CaseText text = CaseText.plated().at("/operations/0", strut.formatted(origin));
      assertThat(Taken.of("biology-steps", text)).isEqualTo("0 fact");
    }
  }

  @Test
  void implants_that_are_not_told_may_be_such_a_strut() {
    assertThat(Taken.of("biology-steps", CaseText.plated().at("/operations/0", "{fixation: null}")))
        .isEqualTo("unknown, ask op-1/biology");
  }

  @Test
  void every_stage_of_a_plan_counts() {
    CaseText text =
        with("[{kind: 'spacer'}]")
            .redone("plate-bent")
            .at(
                "/plans/0",
                "{stages: [{id: 'a', biology: [{kind: 'spacer'}]}, {id: 'b', biology: [{kind:"
                    + " 'reamer-graft'}]}]}");
    assertThat(Taken.of("graft-makeup", text)).isEqualTo("living fact");
  }
}
