package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StillBrokenTest {

  @ParameterizedTest(name = "{0} reads {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          diagnosis: 'united'        | no fact
          diagnosis: 'healing'       | yes fact
          diagnosis: 'nonunion'      | yes fact
          pain: 3                    | unknown, ask findings/diagnosis
          """)
  void the_latest_diagnosis_before_a_plan_tells(String finding, String reads) {
    CaseText text =
        CaseText.plated()
            .at(
                "",
                "{findings: [{day: 90, "
                    + finding
                    + "}], plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: []}]}]}");
    assertThat(Taken.of("still-broken", text, "plan-a")).isEqualTo(reads);
  }

  @org.junit.jupiter.api.Test
  void a_fresh_fracture_is_broken() {
    assertThat(Taken.of("still-broken", CaseText.plated())).isEqualTo("yes fact");
  }
}
