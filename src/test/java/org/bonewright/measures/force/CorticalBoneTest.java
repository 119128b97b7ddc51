package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.bone.BoneGrade;
import org.bonewright.bone.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorticalBoneTest {

  @ParameterizedTest(name = "{0}: {1} to {2} MPa")
  @CsvSource({"GOOD, 15300, 18700", "REDUCED, 12600, 15400", "POOR, 9000, 11000"})
  void has_a_modulus_within_a_tenth_of_that_of_its_grade(BoneGrade grade, double min, double max) {
    Dimension moduli = CorticalBone.moduli(EnumSet.of(grade));
    assertThat(moduli.min()).isCloseTo(min, within(1e-6));
    assertThat(moduli.max()).isCloseTo(max, within(1e-6));
    assertThat(moduli.assumed()).isTrue();
  }

  @Test
  void of_any_grade_spans_all_of_them() {
    Dimension moduli = CorticalBone.moduli(EnumSet.allOf(BoneGrade.class));
    assertThat(moduli.min()).isCloseTo(9000, within(1e-6));
    assertThat(moduli.max()).isCloseTo(18700, within(1e-6));
  }

  @ParameterizedTest(name = "{0} MPa: shear strength {1}, shear modulus {2}")
  @CsvSource({
    "17000, 52, 3300",
    "14000, 36, 2717.6",
    "10000, 24, 1941.2",
    // half way
    "15500, 44, 3008.8",
    "12000, 30, 2329.4"
  })
  void is_as_strong_as_the_table_says(double young, double strength, double shear) {
    CorticalBone bone = new CorticalBone(young);
    assertThat(bone.shearStrength()).isCloseTo(strength, within(1e-9));
    assertThat(bone.elastic().shear()).isCloseTo(shear, within(0.1));
    assertThat(bone.elastic().young()).isEqualTo(young);
  }

  @Property(tries = 100)
  void that_is_stiffer_is_stronger(
      @ForAll @DoubleRange(min = 9000, max = 18600) double young,
      @ForAll @DoubleRange(min = 1, max = 100) double more) {
    assertThat(new CorticalBone(young).shearStrength()).isPositive();
    assertThat(new CorticalBone(young + more).shearStrength())
        .isGreaterThan(new CorticalBone(young).shearStrength());
  }
}
