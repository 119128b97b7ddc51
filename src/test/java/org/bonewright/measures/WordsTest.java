package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.FailureMode;
import org.junit.jupiter.api.Test;

class WordsTest {

  @Test
  void a_constant_is_said_with_blanks_and_written_with_dashes() {
    assertThat(Words.of(FailureMode.SCREWS_PULLED_OUT)).isEqualTo("screws pulled out");
    assertThat(Words.written(FailureMode.SCREWS_PULLED_OUT)).isEqualTo("screws-pulled-out");
  }

  @Test
  void a_mode_that_leaves_two_open_is_asked_for_by_both() {
    assertThat(WhichMode.question(FailureMode.PLATE_BROKEN))
        .isEqualTo("Which was it: plate broken at empty hole or plate broken at filled hole?");
  }
}
