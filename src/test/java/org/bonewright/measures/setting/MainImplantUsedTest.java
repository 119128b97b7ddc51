package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class MainImplantUsedTest {

  private static String held(CaseText text) {
    return Taken.of("main-implant-used", text);
  }

  @Test
  void a_plate_and_a_nail_are_main_implants() {
    assertThat(held(CaseText.plated())).isEqualTo("yes fact");
    assertThat(held(CaseText.nailed())).isEqualTo("yes fact");
  }

  @Test
  void a_strut_alone_holds_nothing() {
    assertThat(
            held(
                CaseText.plated()
                    .at(
                        "/operations/0",
                        "{fixation: [{id: 'strut-1', kind: 'strut', where: 'onlay', fromMm: 150,"
                            + " toMm: 210}]}")))
        .isEqualTo("no fact");
  }

  @Test
  void a_plate_left_from_before_still_holds() {
    CaseText text =
        CaseText.plated()
            .redone("callus-line-open")
            .at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(held(text)).isEqualTo("yes fact");
  }

  @Test
  void not_stated_is_open() {
    assertThat(held(CaseText.bare())).isEqualTo("no or yes fact, ask op-1/fixation");
  }
}
