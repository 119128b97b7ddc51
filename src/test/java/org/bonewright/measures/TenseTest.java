package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TenseTest {

  @Test
  void what_is_still_planned_is_asked_in_the_present() {
    assertThat(Tense.present("Was bone cut out, and how wide a gap was left?"))
        .isEqualTo("Is bone cut out, and how wide a gap is left?");
    assertThat(Tense.present("How far did the bent plate stand off, and which screws were put in?"))
        .isEqualTo("How far does the bent plate stand off, and which screws are put in?");
  }

  @Test
  void a_word_that_only_begins_like_a_past_stays() {
    assertThat(Tense.present("Is a washer there?")).isEqualTo("Is a washer there?");
  }
}
