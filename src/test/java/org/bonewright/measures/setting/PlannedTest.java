package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class PlannedTest {

  @Test
  void a_plan_and_its_stages_are_still_to_be_done() {
    CaseText text = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of("planned", text, "plan-a")).isEqualTo("yes fact");
    assertThat(Taken.of("planned", text, "plan-a/stage-1")).isEqualTo("yes fact");
    assertThat(Taken.of("planned", text, "op-1")).isEqualTo("no fact");
  }
}
