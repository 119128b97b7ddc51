package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.bonewright.casefile.CaseText;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.PlateScrew;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is built in the middle of every range, reckoned by hand: a bone of 360 mm, 24 wide with a
 * cortex of 7, its line at 180; holes 18 mm apart, the first at 99.
 */
class BuiltByHandTest {

  private static final String SIX = "[1, 3, 5, 6, 8, 10]";

  private static FixedBone built(CaseText text) {
    return new Builder(Sketches.of(text), Draw.MIDDLE).build();
  }

  @Test
  void holes_lie_where_they_are_told_to_lie_over_a_narrow_gap() {
    assertThat(built(Sketches.bridged(2, SIX)).plates().get(0).holes())
        .containsExactly(-81.0, -63.0, -45.0, -27.0, -9.0, 9.0, 27.0, 45.0, 63.0, 81.0);
  }

  @Test
  void over_a_wider_gap_each_side_moves_out_until_its_last_hole_lies_on_bone() {
    // 10 + 1 mm from the middle: 2 mm farther on either side
    assertThat(built(Sketches.bridged(20, SIX)).plates().get(0).holes())
        .containsExactly(-83.0, -65.0, -47.0, -29.0, -11.0, 11.0, 29.0, 47.0, 65.0, 83.0);
  }

  @Test
  void the_shaft_ends_where_the_bone_does_or_a_millimetre_beyond_what_is_fixed_to_it() {
    FixedBone whole = built(Sketches.bridged(2, SIX));
    assertThat(whole.shaft().proximal()).isEqualTo(179);
    assertThat(whole.shaft().distal()).isEqualTo(179);
    // a bone of 240 mm: 60 mm are left beyond the line, the plate reaches 81 and 10 more are taken
    CaseText brief = Sketches.bridged(2, SIX).at("/bone", "{lengthMm: 240}");
    assertThat(built(brief).shaft().proximal()).isEqualTo(179);
    assertThat(built(brief).shaft().distal()).isEqualTo(90);
  }

  @Test
  void the_gap_that_is_strained_is_the_gap_as_told() {
    assertThat(new Builder(Sketches.of(Sketches.bridged(2, SIX)), Draw.MIDDLE).strained())
        .isEqualTo(2);
    assertThat(new Builder(Sketches.of(Sketches.bridged(2, SIX)), Draw.MIDDLE).radius())
        .isCloseTo(12, within(1e-9));
  }

  @ParameterizedTest(name = "screw of {0} mm: {1} N")
  @CsvSource({
    // half way from 2000 to 3000 N for 4.5 mm, by the square of the diameter
    "4.5, 2500",
    "3.5, 1512.35",
    "6.5, 5216.05"
  })
  void a_conventional_screw_in_good_bone_presses_its_plate_by_the_square_of_its_diameter(
      double diameter, double force) {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0/fixation/0",
                "{screws: [{at: [1, 3, 8, 10], type: 'cortical', cortices: 2, track: 'fresh',"
                    + " diameterMm: "
                    + diameter
                    + "}]}");
    assertThat(built(text).screws())
        .allSatisfy(
            screw ->
                assertThat(((PlateScrew.Head.Pressed) screw.head()).force())
                    .isCloseTo(force, within(0.01)));
  }

  @Test
  void ends_are_pressed_together_between_the_core_of_the_bone_and_the_plate() {
    // core of a tube: (12² + 5²) / (4 · 12) = 3.521 mm; half way of 300 to 1200 N
    FixedBone pressed = built(CaseText.plated());
    double share = Sketches.of(CaseText.plated()).line().towardsPlate().middle();
    assertThat(pressed.compression().orElseThrow().force()).isEqualTo(750);
    assertThat(pressed.compression().orElseThrow().towardsPlate())
        .isCloseTo(3.5208 + share * (12 - 3.5208), within(0.001));
  }

  @Test
  void a_strut_in_the_canal_lies_as_told_within_the_bone() {
    BoneStrut inside = strut(140, 220);
    assertThat(inside.from()).isEqualTo(-40);
    assertThat(inside.to()).isEqualTo(40);
    assertThat(inside.section().outer()).isEqualTo(8);
    assertThat(inside.section().inner()).isEqualTo(4);
    // as long as the bone: a gap short of its ends, 180 - 2
    assertThat(strut(0, 360).from()).isEqualTo(-178);
    assertThat(strut(0, 360).to()).isEqualTo(178);
  }

  private static BoneStrut strut(int from, int to) {
    CaseText plain = Sketches.bridged(2, SIX);
    String plate = plain.tree().at("/operations/0/fixation/0").toString();
    return built(
            plain.at(
                "/operations/0",
                "{fixation: ["
                    + plate
                    + ", {kind: 'strut', id: 's', where: 'intramedullary', fromMm: "
                    + from
                    + ", toMm: "
                    + to
                    + ", outerMm: 8, wallMm: 2}]}"))
        .strut()
        .orElseThrow();
  }

  @Test
  void two_lag_screws_cross_the_line_an_eighth_of_the_radius_off_its_middle() {
    String plate = CaseText.plated().tree().at("/operations/0/fixation/0").toString();
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{compression: {method: 'lag-screw'}, reduction: {gapFarMm: 0}}")
            .at(
                "/operations/0",
                "{fixation: ["
                    + plate
                    + ", {id: 'lag-0', kind: 'lag-screw', diameterMm: 4.5}, {id: 'lag-1', kind:"
                    + " 'lag-screw', diameterMm: 4.5}]}");
    FixedBone fixed = built(text);
    // 12 / 8 mm to either side
    assertThat(fixed.beside().lags())
        .extracting(BuiltByHandTest::middle)
        .containsExactly(1.5, -1.5);
    // a head of 1.75 times the thread
    assertThat(fixed.beside().lags().get(0).headRadius()).isCloseTo(3.9375, within(1e-9));
  }

  private static double middle(LaggedScrew lag) {
    return Math.rint(1e6 * (lag.head().out() + lag.thread().out()) / 2) / 1e6;
  }

  private static CaseText pinned(double gap, String more) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm: "
                + gap
                + ", gapFarMm: "
                + gap
                + ", contactPercent: 0}, fixation: ["
                + Sketches.FIXATOR
                + more
                + "]}");
  }

  @Test
  void a_fixator_has_its_bars_one_behind_the_other_and_pins_with_a_thinner_core() {
    BarFixator fixator = built(pinned(2, "")).beside().fixator().orElseThrow();
    assertThat(fixator.pins())
        .extracting(BarFixator.Pin::at)
        .containsExactly(-110.0, -70.0, -30.0, 30.0, 70.0, 110.0);
    // half way from 0.7 to 0.85 of 5 mm; the second bar half way from 15 to 40 mm behind
    assertThat(fixator.pins().get(0).core()).isCloseTo(3.875, within(1e-9));
    assertThat(fixator.bars()).extracting(BarFixator.Bar::distance).containsExactly(50.0, 77.5);
  }

  @Test
  void a_pin_in_the_gap_holds_nothing_and_one_at_its_edge_stands_a_millimetre_in_the_bone() {
    assertThat(built(pinned(62, "")).beside().fixator().orElseThrow().pins())
        .extracting(BarFixator.Pin::at)
        .containsExactly(-110.0, -70.0, 70.0, 110.0);
    assertThat(built(pinned(59, "")).beside().fixator().orElseThrow().pins())
        .extracting(BarFixator.Pin::at)
        .containsExactly(-110.0, -70.0, -30.5, 30.5, 70.0, 110.0);
  }

  @Test
  void a_bolt_in_the_gap_holds_nothing_and_one_at_its_edge_stands_a_millimetre_in_the_bone() {
    assertThat(nail(62).bolts()).extracting(MetalNail.Bolt::at).containsExactly(-120.0, 130.0);
    assertThat(nail(59).bolts())
        .extracting(MetalNail.Bolt::at)
        .containsExactly(-120.0, -30.5, 30.5, 130.0);
  }

  private static MetalNail nail(double gap) {
    return built(
            CaseText.nailed()
                .at(
                    "/operations/0",
                    "{reduction: {gapNearMm: "
                        + gap
                        + ", gapFarMm: "
                        + gap
                        + ", contactPercent: 0}}")
                .at(
                    "/operations/0/fixation/0",
                    "{bolts: [{end: 'near', atMm: 60, diameterMm: 5}, {end: 'near', atMm: 150,"
                        + " diameterMm: 5}, {end: 'far', atMm: 210, diameterMm: 5}, {end: 'far',"
                        + " atMm: 310, diameterMm: 5}]}"))
        .nail()
        .orElseThrow();
  }

  @Test
  void a_screw_thread_that_hardly_holds_is_left_out() {
    Draw least = new Draw(Map.of(Assumption.THREAD, 0.0));
    Sketch sketch = Sketches.of(Sketches.bridged(2, SIX));
    assertThat(new Builder(sketch, least).build().screws()).hasSize(6);
  }
}
