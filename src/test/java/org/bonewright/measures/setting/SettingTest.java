package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class SettingTest {

  private static final CaseText TWO = CaseText.plated().redone("plate-bent");

  @Test
  void the_first_fixation_is_of_a_fresh_fracture() {
    assertThat(Taken.of("setting", TWO, "op-1")).isEqualTo("fresh fact");
  }

  @Test
  void after_a_fixation_it_is_a_revision() {
    assertThat(Taken.of("setting", TWO)).isEqualTo("revision fact");
  }

  @Test
  void an_earlier_operation_that_put_nothing_in_leaves_it_fresh() {
    assertThat(Taken.of("setting", TWO.at("/operations/0", "{fixation: []}")))
        .isEqualTo("fresh fact");
  }

  @Test
  void an_earlier_operation_that_does_not_say_counts_as_a_fixation() {
    assertThat(Taken.of("setting", TWO.at("/operations/0", "{fixation: null}")))
        .isEqualTo("revision fact");
  }

  @Test
  void a_stage_that_did_what_it_was_for_leaves_it_fresh() {
    assertThat(Taken.of("setting", TWO.at("/operations/0", "{outcome: {result: 'stage-done'}}")))
        .isEqualTo("fresh fact");
  }

  @Test
  void it_is_open_where_nobody_says_what_became_of_the_operation_before() {
    assertThat(Taken.of("setting", TWO.at("/operations/0", "{outcome: null}")))
        .isEqualTo("fresh or revision fact, ask op-1/outcome/result");
  }
}
