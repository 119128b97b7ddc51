package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The frame model against solids of the same constructs, solved by a general finite-element program
 * (src/test/fe). Bounds are what was measured, rounded up: percent of the solid's value, positive
 * where the frame model moves more.
 */
class FiniteElementsTest {

  private static final List<String> IN_PLANE = List.of("end dx", "end dz", "end ry");
  private static final List<String> GAP = List.of("gap near", "gap far");

  private final Solids solids = Solids.read();
  private final SolidComparison comparison = new SolidComparison(solids);

  @Test
  void pull_and_bending_over_a_plated_gap_move_up_to_5_percent_less() {
    for (String load : List.of("N", "My")) {
      holds(-5, 0, "short", load, IN_PLANE);
      holds(-5, 0, "short", load, GAP);
    }
  }

  @Test
  void with_a_long_free_plate_they_move_up_to_2_5_percent_less() {
    for (String load : List.of("N", "My")) {
      holds(-2.5, 0, "long", load, IN_PLANE);
      holds(-2.5, 0, "long", load, GAP);
    }
  }

  @Test
  void with_two_and_six_empty_holes_they_are_right_within_1_5_percent() {
    for (String construct : List.of("two", "six")) {
      for (String load : List.of("N", "My")) {
        holds(-1.5, 1.5, construct, load, IN_PLANE);
        holds(-1.5, 1.5, construct, load, GAP);
      }
    }
  }

  @Test
  void bending_across_the_plate_is_right_within_2_percent() {
    for (String construct : List.of("short", "two", "long", "strut", "opposite")) {
      holds(-2, 2, construct, "Mx", List.of("end dy", "end rx"));
    }
  }

  @Test
  void with_six_empty_holes_the_plate_bends_across_up_to_8_percent_too_much() {
    holds(6, 8, "six", "Mx", List.of("end dy", "end rx"));
  }

  @Test
  void a_plated_gap_twists_5_to_11_percent_too_much() {
    for (String construct : List.of("short", "two", "long", "six")) {
      holds(5, 11, construct, "T", List.of("end rz", "gap shear"));
    }
    holds(0, 3, "short", "T", List.of("end dy"));
    holds(0, 3, "long", "T", List.of("end dy"));
  }

  @Test
  void a_plate_alone_over_a_gap_carries_the_load_in_the_solid_too() {
    for (String construct : List.of("short", "two", "long", "six")) {
      holds(-1, 1, construct, "N", List.of("plate N", "plate Mweak"));
      holds(-1, 1, construct, "My", List.of("plate Mweak"));
      holds(-1, 1, construct, "Mx", List.of("plate Mstrong"));
      holds(-1, 3, construct, "T", List.of("plate T"));
      assertThat(solids.finest(construct, "My", "plate N")).isCloseTo(0, within(0.2));
    }
  }

  @Test
  void stress_at_the_edge_of_an_empty_hole_reads_13_to_15_percent_high() {
    holds(13, 15, "long", "N", List.of("hole edge"));
    holds(13, 15, "long", "My", List.of("hole edge"));
  }

  @Test
  void with_a_strut_the_end_moves_up_to_10_percent_too_much() {
    holds(5, 10, "strut", "N", IN_PLANE);
    holds(5, 10, "strut", "My", IN_PLANE);
    holds(5, 10, "strut", "T", List.of("end rz", "gap shear"));
  }

  @Test
  void with_a_strut_the_far_cortex_moves_up_to_20_percent_too_much() {
    holds(15, 20, "strut", "N", List.of("gap far"));
    holds(15, 20, "strut", "My", List.of("gap far"));
  }

  @Test
  void with_a_strut_the_share_of_the_plate_is_right_within_18_percent() {
    holds(-18, 18, "strut", "N", List.of("plate N", "plate Mweak"));
    holds(-18, 18, "strut", "My", List.of("plate N", "plate Mweak"));
    holds(-6, 6, "strut", "Mx", List.of("plate Mstrong"));
    holds(-6, 6, "strut", "T", List.of("plate T"));
  }

  @Test
  void with_two_opposite_plates_the_end_moves_up_to_14_percent_too_much() {
    holds(5, 14, "opposite", "N", IN_PLANE);
    holds(5, 14, "opposite", "My", IN_PLANE);
    holds(5, 14, "opposite", "T", List.of("end rz"));
  }

  @Test
  void with_two_opposite_plates_the_small_gap_movement_is_up_to_45_percent_too_large() {
    holds(5, 45, "opposite", "N", GAP);
    holds(5, 45, "opposite", "My", GAP);
  }

  @Test
  void two_opposite_plates_share_force_and_torque_within_2_percent() {
    holds(-2, 2, "opposite", "N", List.of("plate N"));
    holds(-2, 2, "opposite", "My", List.of("plate N"));
    holds(-2, 2, "opposite", "Mx", List.of("plate Mstrong"));
    holds(-2, 2, "opposite", "T", List.of("plate T"));
  }

  @Test
  void a_nail_bends_and_twists_right_within_3_percent() {
    holds(0, 3, "nail", "My", List.of("end dx", "end ry", "gap near", "gap far"));
    holds(0, 3, "nail", "Mx", List.of("end dy", "end rx"));
    holds(-1, 1, "nail", "T", List.of("end rz", "gap shear"));
  }

  @Test
  void a_nail_shortens_up_to_14_percent_too_much() {
    holds(5, 14, "nail", "N", List.of("end dz", "gap near", "gap far"));
  }

  @Test
  void over_a_bonded_fracture_the_end_moves_right_within_8_percent() {
    holds(-3, 4, "bonded", "N", IN_PLANE);
    holds(-3, 8.5, "bonded", "My", IN_PLANE);
    holds(0, 1, "bonded", "Mx", List.of("end dy", "end rx"));
    holds(2, 4, "bonded", "T", List.of("end rz"));
  }

  @Test
  void over_a_bonded_fracture_the_plate_bends_up_to_9_percent_too_much() {
    holds(-2, 0, "bonded", "N", List.of("plate N"));
    holds(-2, 0, "bonded", "My", List.of("plate N"));
    holds(7, 9, "bonded", "N", List.of("plate Mweak"));
    holds(7, 9, "bonded", "My", List.of("plate Mweak"));
    holds(5, 6, "bonded", "Mx", List.of("plate Mstrong"));
    holds(0, 1, "bonded", "T", List.of("plate T"));
  }

  @Test
  void where_ends_meet_the_end_moves_right_within_9_percent() {
    holds(-2, 4, "meets", "N", IN_PLANE);
    holds(-4, 0, "meets", "My", IN_PLANE);
    holds(-4.5, 0, "meets", "My", GAP);
    holds(-2, 8.5, "meets", "-My", IN_PLANE);
  }

  /** In the solid the ends touch without a layer that gives; in the model it gives 0.1 µm here. */
  @Test
  void where_ends_are_pressed_together_they_stay_closed() {
    for (String load : List.of("N", "-My")) {
      for (String cortex : GAP) {
        assertThat(solids.finest("meets", load, cortex)).isCloseTo(0, within(2e-4));
        assertThat(SolidComparison.read(SolidComparison.answer("meets", load), cortex))
            .isCloseTo(0, within(2e-4));
      }
    }
  }

  @Test
  void where_ends_meet_the_plate_bends_up_to_13_percent_too_much() {
    holds(-2, 0, "meets", "N", List.of("plate N"));
    holds(-2, 0, "meets", "-My", List.of("plate N"));
    holds(12, 13, "meets", "N", List.of("plate Mweak"));
    holds(12, 13, "meets", "-My", List.of("plate Mweak"));
    holds(-1, 1, "meets", "My", List.of("plate Mweak"));
  }

  @Test
  void with_plates_at_a_right_angle_every_movement_is_right_within_7_percent() {
    List<String> bent = List.of("end dx", "end dy", "end rx", "end ry");
    holds(-3, 3, "angle", "N", bent);
    holds(-3, 7.5, "angle", "My", bent);
    holds(-3, 4.5, "angle", "Mx", bent);
    holds(2, 5, "angle", "N", List.of("end dz"));
    holds(2, 5, "angle", "My", List.of("end dz"));
    holds(12, 14, "angle", "T", List.of("end rz", "gap shear"));
  }

  @Test
  void with_plates_at_a_right_angle_the_small_gap_movement_is_up_to_15_percent_too_large() {
    holds(8, 15, "angle", "N", GAP);
    holds(-3, 9, "angle", "My", GAP);
  }

  @Test
  void plates_at_a_right_angle_share_force_and_torque_within_3_percent() {
    holds(-3, 3, "angle", "N", List.of("plate N"));
    holds(-3, 3, "angle", "My", List.of("plate N"));
    holds(-3, 3, "angle", "Mx", List.of("plate Mstrong"));
    holds(-3, 3, "angle", "T", List.of("plate T"));
  }

  @Test
  void a_thick_titanium_plate_on_a_larger_bone_moves_up_to_6_percent_less() {
    for (String load : List.of("N", "My")) {
      holds(-6, 0, "titanium", load, IN_PLANE);
      holds(-5.5, 1, "titanium", load, GAP);
    }
    holds(-1, 1, "titanium", "Mx", List.of("end dy", "end rx"));
    holds(-1, 1, "titanium", "N", List.of("plate N", "plate Mweak"));
  }

  @Test
  void a_thick_titanium_plate_twists_up_to_17_percent_too_much() {
    holds(13, 17, "titanium", "T", List.of("end rz", "gap shear"));
    holds(-1, 1, "titanium", "T", List.of("plate T"));
  }

  /** Two sizes of elements; torsion of a plate only one element thick is the slowest to settle. */
  @Test
  void the_solids_themselves_have_settled() {
    for (String construct : List.of("short", "strut", "opposite", "titanium", "nail")) {
      assertThat(solids.refinement(construct, "N", "end dz")).isCloseTo(1, within(0.01));
      assertThat(solids.refinement(construct, "T", "end rz")).isCloseTo(1, within(0.04));
    }
  }

  private void holds(
      double least, double most, String construct, String load, List<String> quantities) {
    comparison.holds(least, most, construct, load, quantities);
  }
}
