package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.mechanics.answer.GivingWay;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.junit.jupiter.api.Test;

/**
 * The frame model against solids whose parts touch without being one: ends that are pressed
 * together, bolts in a nail, plates under pressed screws. Bounds are what was measured, rounded up:
 * percent of the solid's value, positive where the frame model moves more.
 */
class TouchingSolidsTest {

  private static final List<String> IN_PLANE = List.of("end dx", "end dz", "end ry");
  private static final List<String> GAP = List.of("gap near", "gap far");
  private static final List<String> PLATE = List.of("plate N", "plate Mweak");

  private final Solids solids = Solids.read();
  private final SolidComparison comparison = new SolidComparison(solids);

  @Test
  void ends_pressed_as_wanted_are_so_in_the_solid_too() {
    holds(-0.1, 0.1, "squeezed", "P", PLATE);
  }

  @Test
  void while_pressed_ends_are_closed_the_end_moves_right_within_9_percent() {
    for (String load : List.of("N", "-N")) {
      holds(-2.5, 4, "squeezed", load, IN_PLANE);
    }
    for (String load : List.of("My", "-My", "-My*5")) {
      holds(-1.5, 8.5, "squeezed", load, IN_PLANE);
    }
  }

  /** In the solid the ends touch without a layer that gives; in the model it gives 0.1 µm here. */
  @Test
  void small_loads_do_not_part_pressed_ends() {
    for (String load : List.of("N", "-N", "My", "-My")) {
      for (String cortex : GAP) {
        assertThat(solids.finest("squeezed", load, cortex)).isCloseTo(0, within(2e-4));
        assertThat(model("squeezed", load, cortex)).isCloseTo(0, within(2e-4));
      }
    }
  }

  @Test
  void over_pressed_ends_the_plates_share_of_a_load_is_right_and_bends_it_up_to_13_percent_more() {
    for (String load : List.of("N", "-N", "My", "-My")) {
      assertThat(shareOff("squeezed", load, "plate N")).isBetween(-2.0, 2.0);
      assertThat(shareOff("squeezed", load, "plate Mweak")).isBetween(10.0, 13.0);
    }
  }

  /**
   * In the solid the far cortex is pressed by a third more than plane sections tell from the same
   * force: 3.27 against 2.50 MPa. What a moment takes off it agrees within 1 %.
   */
  @Test
  void the_opening_moment_is_told_23_percent_too_low() {
    double told = new MechanicalModel(SolidBones.of("squeezed")).openingMoment().orElseThrow();
    double solid = solids.finest("squeezed", "P", "opening moment");
    assertThat(100 * (told / solid - 1)).isBetween(-25.0, -22.0);
    // At 7.5 N·m the share of the plate is still that of closed ends.
    assertThat(plateTakes("My*3") / plateTakes("My")).isCloseTo(3, within(0.01));
    assertThat(plateTakes("My*5") / plateTakes("My")).isGreaterThan(5.5);
  }

  private double plateTakes(String load) {
    return solids.finest("squeezed", load, "plate N") - solids.finest("squeezed", "P", "plate N");
  }

  @Test
  void beyond_the_opening_moment_the_far_cortex_opens_up_to_11_percent_too_much() {
    holds(5, 9, "squeezed", "My*5", IN_PLANE);
    holds(5, 11, "squeezed", "My*5", List.of("gap far"));
    holds(0, 2, "squeezed", "My*5", List.of("plate Mweak"));
    assertThat(model("squeezed", "My*5", "plate N"))
        .isCloseTo(solids.finest("squeezed", "My*5", "plate N"), within(0.05 * 800));
  }

  @Test
  void pressed_ends_that_are_pulled_apart_leave_all_to_the_plate() {
    holds(-4, 0, "squeezed", "-N*10", IN_PLANE);
    holds(-4, 0, "squeezed", "-N*10", GAP);
    holds(-0.2, 0.2, "squeezed", "-N*10", PLATE);
  }

  @Test
  void a_nail_on_bolts_that_fit_its_holes_moves_right_within_4_percent() {
    holds(-1, 1, "loose", "N", List.of("end dz", "gap near", "gap far"));
    holds(-4, 0, "loose", "My", List.of("end dx", "end ry", "gap near", "gap far"));
  }

  @Test
  void bolts_that_are_not_one_piece_with_the_nail_cost_a_tenth_of_its_stiffness_in_both() {
    double solid = solids.finest("loose", "My", "end ry") / solids.finest("nail", "My", "end ry");
    double told = model("loose", "My", "end ry") / model("nail", "My", "end ry");
    assertThat(solid).isBetween(1.05, 1.15);
    assertThat(told).isBetween(1.05, 1.15);
  }

  @Test
  void before_anything_slips_a_pressed_plate_moves_up_to_9_percent_too_little() {
    for (String load : List.of("N*0.5", "My*0.4", "-My*0.4", "N", "N*2")) {
      holds(-8.5, -2, "pressed", load, IN_PLANE);
      holds(-9.5, -3.5, "pressed", load, List.of("gap far"));
      holds(9, 18, "pressed", load, List.of("gap near"));
    }
  }

  @Test
  void on_feet_that_are_one_piece_with_the_bone_a_plate_moves_right_within_6_percent() {
    for (String load : List.of("N", "My")) {
      holds(-1, 1, "feet", load, IN_PLANE);
      holds(-1.5, 1, "feet", load, List.of("gap far"));
      holds(20, 24, "feet", load, List.of("gap near"));
    }
    holds(-6, -4, "feet", "Mx", List.of("end dy", "end rx"));
    holds(-1, 2, "feet", "T", List.of("end dy", "end rz", "gap shear"));
  }

  @Test
  void where_feet_beside_the_gap_slip_it_moves_right_within_3_percent() {
    holds(-3, 3, "pressed", "N*4", IN_PLANE);
    holds(-3, 3, "pressed", "N*4", GAP);
  }

  /** Feet 3 and 4 stand beside the gap; they press with 2000 N and rub with 0.3. */
  @Test
  void the_feet_beside_the_gap_slip_where_those_of_the_solid_rub_nearly_all_they_can() {
    for (String foot : List.of("foot 3", "foot 4")) {
      assertThat(solids.finest("pressed", "P", foot + " force")).isCloseTo(2000, within(10.0));
      assertThat(rubbed("N", foot)).isBetween(0.15, 0.5);
      assertThat(rubbed("N*4", foot)).isBetween(0.85, 1.0);
    }
    assertThat(SolidComparison.answer("pressed", "N*2").events())
        .extracting(GivingWay::what)
        .containsOnly("tilt");
    assertThat(SolidComparison.answer("pressed", "N*4").events())
        .filteredOn(event -> event.what().equals("slip"))
        .hasSize(2)
        .allSatisfy(event -> assertThat(event.load()).isBetween(0.9, 1.0))
        .allSatisfy(event -> assertThat(Math.abs(event.at())).isEqualTo(18));
  }

  private double rubbed(String load, String foot) {
    return Math.abs(solids.finest("pressed", load, foot + " along"))
        / (0.3 * solids.finest("pressed", load, foot + " force"));
  }

  /** The cautious load at which it slips counts on all of it. */
  @Test
  void the_foot_beside_the_gap_takes_all_of_a_pull_where_the_model_gives_it_five_sixths() {
    double solid =
        (solids.finest("pressed", "N", "foot 3 along")
                - solids.finest("pressed", "P", "foot 3 along"))
            / 200;
    LoadAnswer told = SolidComparison.answer("pressed", "N");
    double shear =
        told.screws().stream().filter(screw -> screw.at() == -18).findFirst().orElseThrow().shear();
    assertThat(solid).isBetween(0.98, 1.02);
    assertThat(shear / 200).isBetween(0.8, 0.86);
    assertThat(told.slipCautious().orElseThrow()).isEqualTo(0.3 * 2000 / 200);
  }

  /** Return by how many percent more of a load than in the solid a plate carries in the model. */
  private double shareOff(String construct, String load, String quantity) {
    double solid =
        solids.finest(construct, load, quantity) - solids.finest(construct, "P", quantity);
    double told = model(construct, load, quantity) - model(construct, "P", quantity);
    return 100 * (told / solid - 1);
  }

  private static double model(String construct, String load, String quantity) {
    return SolidComparison.read(SolidComparison.answer(construct, load), quantity);
  }

  private void holds(
      double least, double most, String construct, String load, List<String> quantities) {
    comparison.holds(least, most, construct, load, quantities);
  }
}
