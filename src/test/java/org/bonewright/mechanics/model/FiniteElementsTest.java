package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;

/**
 * The frame model against solids of the same constructs, solved by a general finite-element program
 * (src/test/fe). Bounds are what was measured, rounded up: percent of the solid's value, positive
 * where the frame model moves more.
 */
class FiniteElementsTest {

  private static final Map<String, Load> LOADS =
      Map.of(
          "N", Load.axial(-200),
          "My", Load.bendingY(2500),
          "Mx", Load.bendingX(1000),
          "T", Load.torque(1500));
  private static final Material TITANIUM = Material.isotropic(110_000, 0.34);
  private static final List<String> IN_PLANE = List.of("end dx", "end dz", "end ry");
  private static final List<String> GAP = List.of("gap near", "gap far");

  private final Solids solids = Solids.read();

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
  void bending_across_the_plate_is_right_within_2_percent() {
    for (String construct : List.of("short", "long", "strut", "opposite")) {
      holds(-2, 2, construct, "Mx", List.of("end dy", "end rx"));
    }
  }

  @Test
  void a_plated_gap_twists_5_to_11_percent_too_much() {
    holds(5, 11, "short", "T", List.of("end rz", "gap shear"));
    holds(5, 11, "long", "T", List.of("end rz", "gap shear"));
    holds(0, 3, "short", "T", List.of("end dy"));
    holds(0, 3, "long", "T", List.of("end dy"));
  }

  @Test
  void a_plate_alone_over_a_gap_carries_the_load_in_the_solid_too() {
    for (String construct : List.of("short", "long")) {
      holds(-1, 1, construct, "N", List.of("plate N", "plate Mweak"));
      holds(-1, 1, construct, "My", List.of("plate Mweak"));
      holds(-1, 1, construct, "Mx", List.of("plate Mstrong"));
      holds(-1, 1, construct, "T", List.of("plate T"));
      assertThat(solids.finest(construct, "My", "plate N")).isCloseTo(0, within(0.1));
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

  /** Two sizes of elements; torsion of a plate only one element thick is the slowest to settle. */
  @Test
  void the_solids_themselves_have_settled() {
    for (String construct : List.of("short", "strut", "opposite", "nail")) {
      assertThat(solids.refinement(construct, "N", "end dz")).isCloseTo(1, within(0.01));
      assertThat(solids.refinement(construct, "T", "end rz")).isCloseTo(1, within(0.03));
    }
  }

  private void holds(
      double least, double most, String construct, String load, List<String> quantities) {
    MechanicalModel model = new MechanicalModel(bone(construct));
    if (!(model.under(LOADS.get(load)) instanceof Outcome.Answered told)) {
      throw new AssertionError("no answer for " + construct);
    }
    for (String quantity : quantities) {
      double solid = solids.finest(construct, load, quantity);
      double percent = 100 * (read(told.answer(), quantity) / solid - 1);
      assertThat(percent)
          .as("%s under %s: %s, percent more than the solid", construct, load, quantity)
          .isBetween(least, most);
    }
  }

  private static double read(LoadAnswer answer, String quantity) {
    return switch (quantity) {
      case "end dx" -> answer.end().dx();
      case "end dy" -> answer.end().dy();
      case "end dz" -> answer.end().dz();
      case "end rx" -> answer.end().rx();
      case "end ry" -> answer.end().ry();
      case "end rz" -> answer.end().rz();
      case "gap near" -> answer.gap().near();
      case "gap far" -> answer.gap().far();
      case "gap shear" -> answer.gap().shear();
      case "plate N" -> cut(answer, 0).axial();
      case "plate Mweak" -> cut(answer, 0).weak();
      case "plate Mstrong" -> cut(answer, 0).strong();
      case "plate T" -> cut(answer, 0).torque();
      case "hole edge" -> cut(answer, 18).edge();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static PlateCut cut(LoadAnswer answer, double level) {
    return answer.plates().get(0).stream()
        .filter(cut -> cut.z() == level)
        .findFirst()
        .orElseThrow();
  }

  private static FixedBone bone(String construct) {
    Head locked = new Head.Locked();
    Filling open = new Filling.Nothing();
    FixedBone plated = Constructs.plated(4, open, locked, -90, -54, -18, 18, 54, 90);
    return switch (construct) {
      case "short" -> plated;
      case "long" -> Constructs.plated(4, open, locked, -90, -54, 54, 90);
      case "strut" ->
          with(
              plated,
              plated.plates(),
              plated.screws(),
              Optional.of(
                  new BoneStrut(
                      Material.isotropic(17_000, 0.3), new HollowCircle(10.5, 5.5), -70, 75)),
              Optional.empty());
      case "opposite" -> {
        FixedBone second = Constructs.turned(180, 4, open, locked, -72, -36, 36, 72);
        List<MetalPlate> plates = List.of(plated.plates().get(0), second.plates().get(0));
        List<PlateScrew> screws = new ArrayList<>(plated.screws());
        second.screws().forEach(screw -> screws.add(onSecond(screw)));
        yield with(plated, plates, screws, Optional.empty(), Optional.empty());
      }
      case "nail" ->
          with(
              plated,
              List.of(),
              List.of(),
              Optional.empty(),
              Optional.of(
                  new MetalNail(
                      TITANIUM,
                      HollowCircle.solid(9),
                      List.of(bolt(-120), bolt(-80), bolt(85), bolt(105)))));
      default -> throw new IllegalArgumentException(construct);
    };
  }

  private static FixedBone with(
      FixedBone bone,
      List<MetalPlate> plates,
      List<PlateScrew> screws,
      Optional<BoneStrut> strut,
      Optional<MetalNail> nail) {
    return new FixedBone(
        bone.shaft(), bone.fracture(), plates, screws, strut, nail, Optional.empty());
  }

  private static PlateScrew onSecond(PlateScrew screw) {
    return new PlateScrew(
        1,
        screw.at(),
        screw.material(),
        screw.core(),
        screw.major(),
        screw.pitch(),
        screw.near(),
        screw.far(),
        screw.head(),
        screw.rigid(),
        screw.stiffens());
  }

  private static MetalNail.Bolt bolt(double at) {
    return new MetalNail.Bolt(at, 0, TITANIUM, 4.5, true, false);
  }
}
