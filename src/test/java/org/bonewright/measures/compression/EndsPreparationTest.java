package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndsPreparationTest {

  private static final String ID = "ends-preparation";
  private static final String CUT = "op-1/endsPrepared/toBleedingBone";
  private static final String CANAL = "op-1/endsPrepared/canalOpened";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          toBleedingBone: 'yes', canalOpened: 'yes' | prepared fact
          toBleedingBone: 'yes', canalOpened: 'no'  | canal-closed fact
          toBleedingBone: 'no', canalOpened: 'yes'  | not-cut-back fact
          toBleedingBone: 'no'                      | not-cut-back fact
          toBleedingBone: 'yes'                     | canal-closed or prepared fact, ask op-1/endsPrepared/canalOpened
          canalOpened: 'yes'                        | not-cut-back or prepared fact, ask op-1/endsPrepared/toBleedingBone
          canalOpened: 'no'                         | canal-closed or not-cut-back fact, ask op-1/endsPrepared/toBleedingBone
          """)
  void is_as_stated(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", "{endsPrepared: {" + stated + "}}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void an_operation_that_resects_nothing_cuts_nothing_back() {
    assertThat(Taken.of(ID, CaseText.plated().at("/operations/0", "{resection: []}")))
        .isEqualTo("not-cut-back assumed");
  }

  @Test
  void a_past_resection_need_not_have_reached_bleeding_bone() {
    String open = "canal-closed or not-cut-back or prepared fact, ask " + CUT + " and " + CANAL;
    assertThat(Taken.of(ID, CaseText.plated())).isEqualTo(open);
    assertThat(
            Taken.of(
                ID,
                CaseText.plated().at("/operations/0", "{resection: [{fromMm: 179, toMm: 181}]}")))
        .isEqualTo(open);
  }

  @Test
  void a_planned_resection_is_taken_to_reach_it() {
    CaseText text = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of(ID, text)).isEqualTo("not-cut-back fact");
    assertThat(
            Taken.of(ID, text.at("/plans/0/stages/0", "{resection: [{fromMm: 179, toMm: 181}]}")))
        .isEqualTo("canal-closed assumed");
  }

  @Test
  void a_nail_opens_the_canal() {
    assertThat(Taken.of(ID, CaseText.nailed()))
        .isEqualTo("not-cut-back or prepared fact, ask " + CUT);
  }

  @Test
  void the_steps_of_a_plan_add_up() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', endsPrepared: {toBleedingBone: 'yes'}},"
                    + " {id: 'stage-2', endsPrepared: {canalOpened: 'yes'}}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("prepared fact");
  }
}
