package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class GapBeforeRecordedTest {

  private static final String ID = "gap-before-recorded";

  @Test
  void a_stated_gap_is_on_record() {
    CaseText text = CaseText.plated().at("/operations/0/compression", "{gapBeforeMm: 1}");
    assertThat(Taken.of(ID, text)).isEqualTo("yes record");
  }

  @Test
  void a_gap_of_the_past_that_is_not_stated_is_not() {
    assertThat(Taken.of(ID, CaseText.plated())).isEqualTo("no record");
  }

  @Test
  void a_plan_can_still_be_measured() {
    assertThat(Taken.of(ID, CaseText.plated().redone("plate-bent"))).isEqualTo("planned record");
  }
}
