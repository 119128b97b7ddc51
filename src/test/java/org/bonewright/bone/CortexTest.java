package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Patient;
import org.junit.jupiter.api.Test;

/** A man's tibia; from the table its cortex is 5.4 to 9 mm. */
class CortexTest {

  private static BoneShape bone(String sections, BoneGrade... grades) {
    return new BoneShape(
        CaseText.plated().at("/bone", "{sections: [" + sections + "]}").file().bone(),
        Optional.of(Patient.Sex.MALE),
        Set.of(grades));
  }

  private static void isAbout(Dimension wall, double min, double max, boolean assumed) {
    assertThat(wall.min()).isCloseTo(min, within(1e-9));
    assertThat(wall.max()).isCloseTo(max, within(1e-9));
    assertThat(wall.assumed()).isEqualTo(assumed);
  }

  @Test
  void is_half_of_what_the_canal_leaves() {
    BoneShape bone =
        bone(
            "{atMm: 100, outerMm: 30, canalMm: 20}, {atMm: 200, outerMm: {min: 23, max: 25},"
                + " canalMm: {min: 9, max: 11}}",
            BoneGrade.POOR);
    isAbout(bone.cortexAt(100), 5, 5, false);
    // 12 to 16 mm of wall, both sides
    isAbout(bone.cortexAt(200), 6, 8, false);
    // half way: outer 26.5 to 27.5, canal 14.5 to 15.5
    isAbout(bone.cortexAt(150), 5.5, 6.5, false);
    // beyond: 30 ± 3, 20 ± 2: 5 to 15 mm of wall
    isAbout(bone.cortexAt(50), 2.5, 7.5, true);
  }

  @Test
  void is_never_thinner_than_a_shell() {
    isAbout(
        bone("{atMm: 100, outerMm: {min: 20, max: 30}, canalMm: 20}").cortexAt(100), 0.1, 5, false);
  }

  @Test
  void comes_from_the_table_thinner_in_worse_bone_where_one_width_is_missing() {
    String outerOnly = "{atMm: 100, outerMm: 26}";
    isAbout(bone(outerOnly, BoneGrade.GOOD).cortexAt(100), 5.4, 9, true);
    isAbout(bone(outerOnly, BoneGrade.REDUCED).cortexAt(100), 5.4 * 0.85, 9 * 0.85, true);
    isAbout(bone(outerOnly, BoneGrade.POOR).cortexAt(100), 5.4 * 0.7, 9 * 0.7, true);
    isAbout(bone("", BoneGrade.values()).cortexAt(100), 5.4 * 0.7, 9, true);
  }

  @Test
  void between_two_levels_is_all_that_lies_between_them() {
    BoneShape bone =
        bone(
            "{atMm: 100, outerMm: 30, canalMm: 20}, {atMm: 150, outerMm: 24, canalMm: 10},"
                + " {atMm: 200, outerMm: 32, canalMm: 20}");
    isAbout(bone.cortexAt(new Dimension(100, 200, false, "")), 5, 7, false);
    isAbout(bone.outerAt(new Dimension(100, 200, false, "")), 24, 32, false);
    isAbout(bone.outerAt(new Dimension(125, 125, false, "")), 27, 27, false);
    // beyond the last one 32 ± 10 %
    isAbout(bone.outerAt(new Dimension(175, 230, false, "")), 28, 35.2, true);
  }
}
