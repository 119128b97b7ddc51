package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class PlateAloneTest {

  private static final String ID = "plate-alone";

  @Test
  void a_plate_without_a_nail() {
    assertThat(Taken.of(ID, CaseText.plated())).isEqualTo("yes fact");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("no fact");
  }

  @Test
  void not_a_plate_added_beside_a_nail() {
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{fixation: [{id: 'a', kind: 'plate'}, {id: 'b', kind: 'nail'}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("no fact");
  }

  @Test
  void is_asked_for_where_the_implants_are_not_stated() {
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("no or yes fact, ask op-1/fixation");
  }
}
