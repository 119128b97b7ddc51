package org.bonewright.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ranges, directions, modes of failure and small groups of a file. */
class ValuesTest {

  @Test
  void a_range_has_bounds_that_are_numbers_in_their_order() {
    assertThat(new Quantity(2, 2).isExact()).isTrue();
    assertThat(new Quantity(2, 3).isExact()).isFalse();
    assertThat(new Quantity(2, 5).middle()).isEqualTo(3.5);
    for (double[] wrong :
        new double[][] {
          {3, 2},
          {Double.NaN, 2},
          {2, Double.NaN},
          {2, Double.POSITIVE_INFINITY},
          {Double.NEGATIVE_INFINITY, 2}
        }) {
      assertThatThrownBy(() -> new Quantity(wrong[0], wrong[1]))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @ParameterizedTest(name = "from {0} to {1}: {2} degrees")
  @CsvSource({
    "0, 90, 90",
    "350, 10, 20",
    "10, 350, 20",
    "0, 180, 180",
    "45, 45, 0",
    "90, 271, 179"
  })
  void two_directions_are_as_far_apart_as_the_short_way_round(double a, double b, double apart) {
    assertThat(new Direction(a).angleTo(new Direction(b))).isEqualTo(apart);
  }

  @Test
  void a_direction_lies_within_one_turn() {
    assertThat(new Direction(0).degrees()).isZero();
    assertThatThrownBy(() -> new Direction(360)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Direction(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Direction(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(Direction.Named.MEDIAL.direction()).isEqualTo(new Direction(270));
  }

  @Test
  void a_mode_that_leaves_two_open_is_neither_of_them() {
    assertThat(FailureMode.PLATE_BROKEN.isExact()).isFalse();
    assertThat(FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE.isExact()).isTrue();
    assertThat(FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE.isA(FailureMode.PLATE_BROKEN)).isTrue();
    assertThat(FailureMode.PLATE_BROKEN.isA(FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE)).isFalse();
    assertThat(FailureMode.SCREWS_PULLED_OUT.possible())
        .containsExactlyInAnyOrder(
            FailureMode.SCREWS_PULLED_OUT_IN_SEQUENCE, FailureMode.PLATE_PULLED_OFF_AS_BLOCK);
    assertThat(FailureMode.NAIL_BROKEN.possible())
        .containsExactlyInAnyOrder(
            FailureMode.NAIL_BROKEN_AT_BOLT_HOLE, FailureMode.NAIL_BROKEN_MID_SHAFT);
    assertThat(FailureMode.INFECTION.possible()).containsExactly(FailureMode.INFECTION);
  }

  @ParameterizedTest(name = "gaps {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          gapNearMm: 1, gapFarMm: 3                             | 3.0 3.0
          gapNearMm: 4, gapFarMm: 3                             | 4.0 4.0
          gapNearMm: {min: 0, max: 5}, gapFarMm: {min: 2, max: 3} | 2.0 5.0
          gapNearMm: 1                                          | unknown
          gapFarMm: 1                                           | unknown
          """)
  void the_widest_gap_is_known_only_with_both_sides(String gaps, String widest) {
    Optional<Quantity> gap =
        CaseText.bare()
            .at("/operations/0", "{reduction: {" + gaps + "}}")
            .operation()
            .reduction()
            .orElseThrow()
            .widestGap();
    assertThat(gap.map(g -> g.min() + " " + g.max()).orElse("unknown")).isEqualTo(widest);
  }

  @Test
  void a_load_is_nothing_only_where_it_neither_presses_nor_bends_nor_turns() {
    Quantity none = Quantity.of(0);
    Quantity some = new Quantity(0, 1);
    assertThat(load(none, none, none).isNothing()).isTrue();
    assertThat(load(some, none, none).isNothing()).isFalse();
    assertThat(load(none, some, none).isNothing()).isFalse();
    assertThat(load(none, none, some).isNothing()).isFalse();
  }

  private static BoneLoad load(Quantity press, Quantity bending, Quantity torsion) {
    return new BoneLoad("x", press, bending, Optional.empty(), torsion, "x");
  }

  @Test
  void signs_of_infection_tell_something_once_one_of_them_is_recorded() {
    CaseText bare = CaseText.bare().with("{findings: [{day: 9, infection: {}}]}");
    assertThat(signs(bare).tellsSomething()).isFalse();
    assertThat(signs(bare.at("/findings/0", "{infection: {pus: 'unknown'}}")).tellsSomething())
        .isTrue();
    assertThat(signs(bare.at("/findings/0", "{infection: {crpMgL: 3}}")).tellsSomething()).isTrue();
  }

  private static InfectionSigns signs(CaseText text) {
    return text.file().findings().get(0).infection().orElseThrow();
  }

  @Test
  void a_case_without_its_plans_is_otherwise_the_same() {
    CaseFile planned = CaseText.plated().redone("plate-bent").file();
    CaseFile without = planned.withoutPlans();
    assertThat(without.plans()).isEmpty();
    assertThat(without.operations()).isEqualTo(planned.operations());
    assertThat(without.bone()).isEqualTo(planned.bone());
  }

  @Test
  void a_plate_of_a_family_has_its_usual_spacing() {
    assertThat(Plate.Family.LARGE_FRAGMENT_NARROW.spacingMm()).isEqualTo(16);
    assertThat(Plate.Family.SMALL_FRAGMENT_LOCKING.spacingMm()).isEqualTo(13);
  }
}
