package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class HoldDemandTest {

  private static CaseText cortex(String mm) {
    return CaseText.plated()
        .at("/bone", "{quality: [{method: 'cortical-thickness', value: " + mm + "}]}");
  }

  @Test
  void a_first_fixation_in_good_or_reduced_bone_asks_the_usual() {
    assertThat(Taken.of("hold-demand", cortex("5"))).isEqualTo("usual fact");
    assertThat(Taken.of("hold-demand", cortex("3.5"))).isEqualTo("usual fact");
  }

  @Test
  void poor_bone_asks_more() {
    assertThat(Taken.of("hold-demand", cortex("2.5"))).isEqualTo("raised fact");
  }

  @Test
  void a_revision_asks_more_whatever_the_bone() {
    assertThat(Taken.of("hold-demand", cortex("5").redone("plate-bent"))).isEqualTo("raised fact");
  }

  @Test
  void bone_that_should_have_been_measured_leaves_it_open() {
    CaseText text =
        CaseText.plated().at("/bone", "{quality: null}").at("/patient", "{ageYears: 70}");
    assertThat(Taken.of("hold-demand", text))
        .isEqualTo("raised or usual assumed, ask bone/quality");
  }
}
