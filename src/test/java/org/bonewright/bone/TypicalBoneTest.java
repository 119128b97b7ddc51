package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Patient;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TypicalBoneTest {

  /** Table T1: mean length, the two outer diameters, the cortex; each must lie within the row. */
  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "HUMERUS,  MALE,   320, 22,   21, 5.0",
    "HUMERUS,  FEMALE, 298, 20,   18, 4.2",
    "FEMUR,    MALE,   448, 29,   26.5, 7.0",
    "FEMUR,    FEMALE, 419, 27,   25.6, 6.2",
    "TIBIA,    MALE,   375, 29,   24, 6.0",
    "TIBIA,    FEMALE, 345, 26,   21, 5.0",
    "RADIUS,   MALE,   245, 13,   15, 3.5",
    "RADIUS,   FEMALE, 222, 11,   13, 3.0",
    "ULNA,     MALE,   265, 14,   15, 4.0",
    "ULNA,     FEMALE, 240, 12,   13, 3.4",
    "CLAVICLE, MALE,   155, 12,   13, 2.7",
    "CLAVICLE, FEMALE, 143, 10,   11, 2.3"
  })
  void holds_the_published_means(
      BoneName bone, Patient.Sex sex, double length, double one, double two, double cortex) {
    TypicalBone row = TypicalBone.of(bone, List.of(sex));
    assertThat(length).isBetween(row.length().min(), row.length().max());
    assertThat(cortex).isBetween(row.cortex().min(), row.cortex().max());
    // the outer diameter runs from the smaller one less a tenth to the larger one and a tenth
    assertThat(row.outer().min()).isCloseTo(Math.min(one, two) * 0.9, within(0.3));
    assertThat(row.outer().max()).isGreaterThanOrEqualTo(Math.max(one, two) * 1.1 - 1e-9);
  }

  @ParameterizedTest
  @EnumSource(BoneName.class)
  void without_the_sex_the_row_holds_those_of_men_and_women(BoneName bone) {
    TypicalBone any = TypicalBone.of(bone, List.of());
    for (Patient.Sex sex : List.of(Patient.Sex.MALE, Patient.Sex.FEMALE)) {
      TypicalBone one = TypicalBone.of(bone, List.of(sex));
      holds(any.length(), one.length());
      holds(any.outer(), one.outer());
      holds(any.canal(), one.canal());
      holds(any.cortex(), one.cortex());
    }
    assertThat(TypicalBone.of(bone, List.of(Patient.Sex.OTHER))).isEqualTo(any);
  }

  private static void holds(TypicalBone.Range wide, TypicalBone.Range narrow) {
    assertThat(wide.min()).isLessThanOrEqualTo(narrow.min());
    assertThat(wide.max()).isGreaterThanOrEqualTo(narrow.max());
  }

  @ParameterizedTest
  @EnumSource(BoneName.class)
  void canal_and_two_cortices_fit_within_the_outer_diameter(BoneName bone) {
    for (Patient.Sex sex : List.of(Patient.Sex.MALE, Patient.Sex.FEMALE)) {
      TypicalBone row = TypicalBone.of(bone, List.of(sex));
      assertThat(row.canal().min() + 2 * row.cortex().min()).isLessThan(row.outer().max());
      assertThat(row.canal().max() + 2 * row.cortex().max()).isGreaterThan(row.outer().min());
    }
  }

  @ParameterizedTest
  @EnumSource(BoneName.class)
  void no_default_is_a_single_number(BoneName bone) {
    TypicalBone row = TypicalBone.of(bone, List.of(Patient.Sex.FEMALE));
    for (TypicalBone.Range range : List.of(row.length(), row.outer(), row.canal(), row.cortex())) {
      assertThat(range.min()).isLessThan(range.max());
    }
  }
}
