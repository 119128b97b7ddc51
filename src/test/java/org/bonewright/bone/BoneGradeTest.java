package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.BoneQuality;
import org.bonewright.casefile.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BoneGradeTest {

  private static BoneQuality quality(BoneQuality.Method method, double min, double max) {
    return new BoneQuality(method, new Quantity(min, max), Optional.empty());
  }

  private static Set<BoneGrade> grade(BoneName bone, BoneQuality... qualities) {
    return BoneGrade.measured(bone, List.of(qualities));
  }

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "DELTOID_TUBEROSITY_INDEX, 1.39, POOR",
    "DELTOID_TUBEROSITY_INDEX, 1.4, REDUCED",
    "DELTOID_TUBEROSITY_INDEX, 1.59, REDUCED",
    "DELTOID_TUBEROSITY_INDEX, 1.6, GOOD",
    "COMBINED_CORTICAL_THICKNESS, 3.9, POOR",
    "COMBINED_CORTICAL_THICKNESS, 4, GOOD",
    "CORTICAL_THICKNESS, 2.9, POOR",
    "CORTICAL_THICKNESS, 3, REDUCED",
    "CORTICAL_THICKNESS, 3.9, REDUCED",
    "CORTICAL_THICKNESS, 4, GOOD",
    "FEMORAL_CORTICAL_INDEX, 0.39, POOR",
    "FEMORAL_CORTICAL_INDEX, 0.4, GOOD",
    "DXA_T_SCORE, -2.5, POOR",
    "DXA_T_SCORE, -2.4, REDUCED",
    "DXA_T_SCORE, -1, REDUCED",
    "DXA_T_SCORE, -0.9, GOOD"
  })
  void a_cut_off_parts_two_grades(BoneQuality.Method method, double value, BoneGrade grade) {
    assertThat(grade(BoneName.HUMERUS, quality(method, value, value))).containsExactly(grade);
  }

  @ParameterizedTest
  @EnumSource(
      value = BoneName.class,
      names = {"RADIUS", "ULNA", "CLAVICLE"})
  void a_thin_cortex_says_nothing_of_a_thin_bone(BoneName bone) {
    assertThat(grade(bone, quality(BoneQuality.Method.CORTICAL_THICKNESS, 2, 2))).isEmpty();
  }

  @Test
  void hounsfield_units_grade_nothing() {
    assertThat(grade(BoneName.FEMUR, quality(BoneQuality.Method.CT_HOUNSFIELD, 300, 300)))
        .isEmpty();
  }

  @Test
  void the_worst_measurement_counts() {
    assertThat(
            grade(
                BoneName.HUMERUS,
                quality(BoneQuality.Method.CORTICAL_THICKNESS, 5, 5),
                quality(BoneQuality.Method.DXA_T_SCORE, -3, -3)))
        .containsExactly(BoneGrade.POOR);
  }

  @Test
  void nothing_measured_grades_nothing() {
    assertThat(grade(BoneName.HUMERUS)).isEmpty();
  }

  @Test
  void a_range_across_a_cut_off_leaves_both_grades_possible() {
    assertThat(grade(BoneName.TIBIA, quality(BoneQuality.Method.CORTICAL_THICKNESS, 2.8, 3.6)))
        .containsExactlyInAnyOrder(BoneGrade.POOR, BoneGrade.REDUCED);
  }

  @Test
  void a_second_measurement_can_rule_out_the_better_of_two_grades() {
    assertThat(
            grade(
                BoneName.TIBIA,
                quality(BoneQuality.Method.CORTICAL_THICKNESS, 3.6, 4.4),
                quality(BoneQuality.Method.DXA_T_SCORE, -2, -2)))
        .isEqualTo(EnumSet.of(BoneGrade.REDUCED));
  }

  @Property
  void a_range_allows_every_grade_that_a_value_in_it_gives(
      @ForAll @DoubleRange(min = -4, max = 6) double a,
      @ForAll @DoubleRange(min = -4, max = 6) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll BoneQuality.Method method) {
    double min = Math.min(a, b);
    double max = Math.max(a, b);
    double value = Math.min(max, min + share * (max - min));
    assertThat(grade(BoneName.FEMUR, quality(method, min, max)))
        .containsAll(grade(BoneName.FEMUR, quality(method, value, value)));
  }
}
