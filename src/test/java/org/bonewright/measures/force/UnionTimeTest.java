package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnionTimeTest {

  @ParameterizedTest(name = "{0}, revision {1}: {2} to {3} weeks, {4} to {5} loads")
  @CsvSource({
    // 200000 x 12 / 52 and 500000 x 18 / 52
    "HUMERUS,  false, 12, 18,  46153.8, 173076.9",
    "HUMERUS,  true,  16, 24,  61538.5, 230769.2",
    // legs: 200000 to a million a year
    "FEMUR,    false, 16, 24,  61538.5, 461538.5",
    "FEMUR,    true,  24, 28,  92307.7, 538461.5",
    "TIBIA,    false, 14, 26,  53846.2, 500000",
    "TIBIA,    true,  26, 38, 100000,   730769.2",
    "RADIUS,   true,  20, 30,  76923.1, 288461.5",
    "ULNA,     false, 12, 18,  46153.8, 173076.9",
    "CLAVICLE, false, 10, 16,  38461.5, 153846.2",
    "CLAVICLE, true,  16, 24,  61538.5, 230769.2"
  })
  void is_that_of_the_table(
      BoneName bone, boolean revision, double min, double max, double fewest, double most) {
    Dimension weeks = UnionTime.weeks(bone, revision);
    assertThat(weeks.min()).isEqualTo(min);
    assertThat(weeks.max()).isEqualTo(max);
    assertThat(weeks.assumed()).isTrue();
    assertThat(loads(bone, revision, 0)).isCloseTo(fewest, within(0.1));
    assertThat(loads(bone, revision, 1)).isCloseTo(most, within(0.1));
  }

  @ParameterizedTest
  @EnumSource
  void is_longer_after_a_revision(BoneName bone) {
    assertThat(UnionTime.weeks(bone, true).min()).isGreaterThan(UnionTime.weeks(bone, false).min());
    assertThat(UnionTime.weeks(bone, true).max()).isGreaterThan(UnionTime.weeks(bone, false).max());
  }

  private static double loads(BoneName bone, boolean revision, double place) {
    return UnionTime.loads(bone, revision, new Draw(Map.of(Assumption.CYCLES, place)));
  }
}
