package org.bonewright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.section.Rectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A plate of 12 by 4 mm with a hole of 5 mm at level 0, and solid at level 9. */
class PlateFatigueTest {

  private static final double HOLE = 0;
  private static final double SOLID = 9;
  private static final MetalPlate PLATE =
      new MetalPlate(
          ImplantMetal.STEEL_COLD_WORKED.elastic(),
          new Rectangle(12, 4),
          0,
          5,
          List.of(-18.0, HOLE, 18.0),
          0);

  private static PlateCut cut(double z, double axial, double weak, double strong, double torque) {
    return new PlateCut(z, axial, 0, 0, weak, strong, torque, 0, 0, 0);
  }

  private static PlateCut idle(double z) {
    return cut(z, 0, 0, 0, 0);
  }

  @Test
  void at_a_hole_the_net_section_carries_and_the_edge_counts_in_the_range_only() {
    // Net section 7 x 4 mm: area 28 mm², second moment 7 x 64 / 12. Before the load 280 N and
    // 560 N·mm are 10 and 30 MPa; the load adds 560 N and 1120 N·mm, 20 and 60 MPa.
    PlateFatigue found =
        PlateFatigue.at(PLATE, cut(HOLE, 280, 560, 0, 0), cut(HOLE, 840, 1680, 0, 0));
    assertThat(found.steady()).isCloseTo(40, within(1e-9));
    assertThat(found.range()).isCloseTo(80, within(1e-9));
    // Heywood 2.1985, Roark 1.6897; nine tenths of what is above one counts: 2.0786 and 1.6207.
    assertThat(found.alternating()).isCloseTo((20 * 2.07865 + 60 * 1.62070) / 2, within(1e-3));
  }

  @Test
  void across_the_bone_the_edge_of_the_hole_counts_where_it_bears_more_than_that_of_the_plate() {
    // Net second moment 4 (12³ - 5³) / 12 = 534.33 mm⁴; 6 mm to the edge of the plate, 2.5 mm to
    // that of the hole, which counts 1.9 fold: 4.75 mm, so the plate decides.
    PlateFatigue found = PlateFatigue.at(PLATE, idle(HOLE), cut(HOLE, 0, 0, 5343.333333, 0));
    assertThat(found.range()).isCloseTo(60, within(1e-6));
    assertThat(found.alternating()).isCloseTo(30, within(1e-6));
    // A hole of 8 mm: 4 (12³ - 8³) / 12 = 405.33 mm⁴, and 1.9 x 4 = 7.6 mm.
    MetalPlate wide =
        new MetalPlate(PLATE.material(), PLATE.section(), 0, 8, PLATE.holes(), PLATE.azimuth());
    PlateFatigue wider = PlateFatigue.at(wide, idle(HOLE), cut(HOLE, 0, 0, 4053.333333, 0));
    assertThat(wider.range()).isCloseTo(60, within(1e-6));
    assertThat(wider.alternating()).isCloseTo(38, within(1e-6));
  }

  @Test
  void in_solid_plate_nothing_is_raised() {
    // 480 N on 48 mm², 320 N·mm on 64 mm⁴ at 2 mm, 960 N·mm on 576 mm⁴ at 6 mm: 10 MPa each.
    // Torsion constant 12 x 64 (1/3 - 0.07 (1 - 1/972)) = 202.295 mm⁴: 505.738 N·mm are 10 MPa.
    PlateFatigue found = PlateFatigue.at(PLATE, idle(SOLID), cut(SOLID, 480, 320, 960, 505.738));
    assertThat(found.steady()).isZero();
    assertThat(found.range()).isCloseTo(Math.sqrt(30 * 30 + 3 * 10 * 10), within(1e-3));
    assertThat(found.alternating()).isEqualTo(found.range() / 2);
  }

  @Test
  void torsion_at_a_hole_is_borne_by_what_is_left_beside_it() {
    PlateFatigue hole = PlateFatigue.at(PLATE, idle(HOLE), cut(HOLE, 0, 0, 0, 505.738));
    assertThat(hole.range()).isCloseTo(10 * Math.sqrt(3) / (1 - 5.0 / 12), within(1e-3));
    assertThat(hole.alternating()).isEqualTo(hole.range() / 2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {HOLE, SOLID})
  void what_does_not_change_has_no_range(double z) {
    PlateCut same = cut(z, 300, -700, 200, 900);
    PlateFatigue found = PlateFatigue.at(PLATE, same, same);
    assertThat(found.range()).isZero();
    assertThat(found.alternating()).isZero();
    assertThat(found.mean()).isEqualTo(found.steady()).isPositive();
  }

  @Property(tries = 200)
  void twice_the_load_alternates_twice_as_much_about_the_same_steady_stress(
      @ForAll @DoubleRange(min = -500, max = 500) double axial,
      @ForAll @DoubleRange(min = -5000, max = 5000) double weak,
      @ForAll @DoubleRange(min = -5000, max = 5000) double strong,
      @ForAll @DoubleRange(min = -5000, max = 5000) double torque,
      @ForAll boolean atHole) {
    double z = atHole ? HOLE : SOLID;
    PlateCut before = cut(z, 200, -800, 100, 50);
    PlateFatigue once =
        PlateFatigue.at(PLATE, before, plus(before, 1, axial, weak, strong, torque));
    PlateFatigue twice =
        PlateFatigue.at(PLATE, before, plus(before, 2, axial, weak, strong, torque));
    PlateFatigue back =
        PlateFatigue.at(PLATE, before, plus(before, -1, axial, weak, strong, torque));
    double small = 1e-9 * (1 + once.range());
    assertThat(twice.alternating()).isCloseTo(2 * once.alternating(), within(small));
    assertThat(twice.range()).isCloseTo(2 * once.range(), within(small));
    assertThat(twice.steady()).isEqualTo(once.steady());
    assertThat(back.alternating()).isCloseTo(once.alternating(), within(small));
    assertThat(once.mean()).isEqualTo(once.steady() + once.range() / 2);
    assertThat(once.alternating()).isGreaterThanOrEqualTo(once.range() / 2 - small);
  }

  private static PlateCut plus(
      PlateCut cut, double times, double axial, double weak, double strong, double torque) {
    return cut(
        cut.z(),
        cut.axial() + times * axial,
        cut.weak() + times * weak,
        cut.strong() + times * strong,
        cut.torque() + times * torque);
  }
}
