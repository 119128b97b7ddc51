package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanalReamedTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          11                  | yes fact
          0                   | no fact
          {min: 9, max: 10}   | yes fact
          {min: 0, max: 10}   | no or yes fact, ask op-1/fixation/nail-1/reamedMm
          null                | no or yes fact, ask op-1/fixation/nail-1/reamedMm
          """)
  void follows_from_the_last_reamer_where_zero_means_none(String reamer, String reads) {
    CaseText text = CaseText.nailed().at("/operations/0/fixation/0", "{reamedMm: " + reamer + "}");
    assertThat(Taken.of("canal-reamed", text)).isEqualTo(reads);
  }

  @Test
  void is_no_question_under_a_plate() {
    assertThat(Taken.of("canal-reamed", CaseText.plated())).isEqualTo("none: no nail in place");
    assertThat(Taken.of("canal-reamed", CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
