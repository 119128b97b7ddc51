package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoneReplacedTest {

  private static final String ID = "bone-replaced";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          biology: [{kind: 'autograft-cancellous'}]            | yes fact
          biology: [{kind: 'spacer'}]                          | yes fact
          biology: [{kind: 'marrow'}, {kind: 'decortication'}] | no fact
          biology: []                                          | no fact
          biology: [], transport: {latencyDays: 7}             | yes fact
          biology: null                                        | unknown, ask op-1/biology
          """)
  void asks_what_fills_the_gap(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", "{" + stated + "}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void what_a_plan_does_not_name_is_not_planned() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/plans/0/stages/0", "{biology: null}");
    assertThat(Taken.of(ID, text)).isEqualTo("no fact");
  }

  @Test
  void any_stage_of_a_plan_will_do() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', biology: [{kind: 'spacer'}]}, {id: 'stage-2'}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("yes fact");
  }
}
