package org.bonewright.mechanics.construct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loads, struts and constructs in numbers, worked out by hand. */
class ConstructsByHandTest {

  private static final Material STEEL = Material.isotropic(193_000, 0.3);
  private static final Rectangle SECTION = new Rectangle(12, 4);

  private static OnlayStrut strut(double azimuth) {
    return new OnlayStrut(STEEL, SECTION, azimuth, 100, 200, List.of(120.0, 180.0), List.of(160.0));
  }

  @Test
  void a_load_grows_in_all_its_parts_alike() {
    Load load = new Load(1, 2, 3, 4, 5, 6);
    assertThat(load.times(-2)).isEqualTo(new Load(-2, -4, -6, -8, -10, -12));
    assertThat(Load.axial(700)).isEqualTo(new Load(700, 0, 0, 0, 0, 0));
    assertThat(Load.bendingX(7)).isEqualTo(new Load(0, 0, 0, 7, 0, 0));
    assertThat(Load.bendingY(7)).isEqualTo(new Load(0, 0, 0, 0, 7, 0));
    assertThat(Load.torque(7)).isEqualTo(new Load(0, 0, 0, 0, 0, 7));
  }

  @Test
  void the_size_of_a_load_is_all_its_moments_and_its_forces_on_an_arm() {
    // (10 + 2 + 3) x 20 + 4 + 5 + 6
    assertThat(new Load(-10, 2, -3, 4, -5, 6).size(20)).isEqualTo(315);
    assertThat(new Load(10, -2, 3, -4, 5, -6).size(20)).isEqualTo(315);
  }

  @Test
  void a_line_without_a_gap_is_filled_by_the_thinnest_layer() {
    assertThat(new Fracture(0, new Fracture.Filling.Nothing()).layer()).isEqualTo(0.1);
    assertThat(new Fracture(2, new Fracture.Filling.Nothing()).layer()).isEqualTo(2);
  }

  @Test
  void the_axis_of_a_plate_lies_beyond_bone_and_stand_off_by_half_its_thickness() {
    MetalPlate plate = new MetalPlate(STEEL, SECTION, 1.5, 5, List.of(10.0), 0);
    // 24 / 2 + 1.5 + 4 / 2
    assertThat(plate.axisFrom(24)).isEqualTo(15.5);
    assertThat(plate.hole().plate()).isEqualTo(SECTION);
  }

  @ParameterizedTest(name = "strut at {0}, side {1}: {2} degrees")
  @CsvSource({
    "0, 90, 90",
    "350, 10, 20",
    "10, 350, 20",
    "0, 180, 180",
    "0, 271, 89",
    "90, 450, 0",
    "270, -90, 0"
  })
  void a_strut_is_as_far_from_a_side_as_the_short_way_round(double at, double side, double apart) {
    assertThat(strut(at).apart(side)).isCloseTo(apart, within(1e-9));
  }

  @ParameterizedTest(name = "strut at {0}, plate at {1}: {2}")
  @CsvSource({
    "180, 0, true",
    "135, 0, true",
    "134, 0, false",
    "225, 0, true",
    "226, 0, false",
    "0, 180, true",
    "10, 200, true",
    "350, 170, true",
    "0, 0, false"
  })
  void a_strut_lies_opposite_a_plate_within_an_eighth_of_a_turn(
      double at, double plate, boolean opposite) {
    assertThat(strut(at).isOpposite(plate)).isEqualTo(opposite);
  }

  @ParameterizedTest(name = "at {0} mm: {1}")
  @CsvSource({"100, true", "200, true", "99.9, false", "200.1, false", "150, true", "160, false"})
  void a_strut_is_passed_by_what_enters_along_it_and_does_not_miss_it(
      double level, boolean passed) {
    assertThat(strut(180).isPassed(level)).isEqualTo(passed);
  }

  @Test
  void what_is_added_to_a_construct_leaves_the_rest_as_it_was() {
    Shaft shaft = new Shaft(STEEL, new HollowCircle(24, 14), -100, 100, OptionalDouble.of(50));
    assertThat(shaft.compressiveStrength()).isEmpty();
    MetalPlate plate = new MetalPlate(STEEL, SECTION, 0, 5, List.of(10.0), 0);
    PlateScrew screw =
        new PlateScrew(
            0, 10, STEEL, 3, 4.5, 1.75, 5, 5, new PlateScrew.Head.Locked(), false, false);
    FixedBone bone =
        new FixedBone(
            shaft,
            new Fracture(1, new Fracture.Filling.Nothing()),
            List.of(plate),
            List.of(screw),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Compression(800, 0)));
    BarFixator frame = new BarFixator(0, List.of(), List.of());
    LaggedScrew lag =
        new LaggedScrew(
            0,
            new LaggedScrew.Place(0, 10),
            new LaggedScrew.Place(0, -10),
            STEEL,
            3,
            4.5,
            1.75,
            500,
            4);
    FixedBone all =
        bone.with(new Beside(Optional.of(frame), List.of(lag), Optional.of(strut(180))));
    assertThat(all.beside().fixator()).contains(frame);
    assertThat(all.beside().lags()).containsExactly(lag);
    assertThat(all.beside().onlay()).contains(strut(180));
    assertThat(all.plates()).isEqualTo(bone.plates());
    assertThat(all.screws()).isEqualTo(bone.screws());
    assertThat(all.compression()).isEqualTo(bone.compression());
    FixedBone bare = all.screwed(List.of());
    assertThat(bare.screws()).isEmpty();
    assertThat(bare.beside()).isEqualTo(all.beside());
  }
}
