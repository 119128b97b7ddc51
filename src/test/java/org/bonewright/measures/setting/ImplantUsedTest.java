package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class ImplantUsedTest {

  @Test
  void what_was_put_in_holds_the_bone() {
    assertThat(Taken.of("plate-used", CaseText.plated())).isEqualTo("yes fact");
    assertThat(Taken.of("nail-used", CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of("plate-used", CaseText.nailed())).isEqualTo("no fact");
    assertThat(Taken.of("nail-used", CaseText.nailed())).isEqualTo("yes fact");
  }

  @Test
  void cannot_be_told_where_the_implants_are_not_stated() {
    assertThat(Taken.of("plate-used", CaseText.bare()))
        .isEqualTo("no or yes fact, ask op-1/fixation");
  }

  @Test
  void an_earlier_whole_plate_that_was_left_holds_the_bone() {
    CaseText text =
        CaseText.plated()
            .redone("no-union-metal-intact")
            .at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(Taken.of("plate-used", text)).isEqualTo("yes fact");
  }

  @Test
  void an_earlier_plate_that_broke_does_not() {
    CaseText text =
        CaseText.plated()
            .redone("plate-broken-at-filled-hole")
            .at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(Taken.of("plate-used", text)).isEqualTo("no fact");
  }
}
