package org.bonewright.measures.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoneNameMeasureTest {

  @ParameterizedTest
  @ValueSource(strings = {"humerus", "femur", "tibia", "radius", "ulna", "clavicle"})
  void is_as_stated(String bone) {
    CaseText text = CaseText.bare().at("/bone", "{name: '" + bone + "'}");
    assertThat(Taken.of("bone-name", text)).isEqualTo(bone + " fact");
  }
}
