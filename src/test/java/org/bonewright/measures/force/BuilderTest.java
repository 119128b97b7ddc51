package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.bonewright.bone.HoleSide;
import org.bonewright.casefile.CaseText;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.hold.PullOut;
import org.junit.jupiter.api.Test;

/** Constructs in numbers, under any set of assumptions. */
class BuilderTest {

  /** A lag screw and a neutral plate, pressed together by 100 to 3000 N. */
  private static final Sketch LAGGED =
      Sketches.of(
          CaseText.plated()
              .at(
                  "/operations/0",
                  "{compression: {method: 'lag-screw'}, reduction: {gapFarMm: 0}}"));

  @Provide
  static Arbitrary<Draw> anywhere() {
    return Arbitraries.doubles()
        .between(0, 1)
        .list()
        .ofSize(Assumption.values().length)
        .map(
            places -> {
              Map<Assumption, Double> told = new EnumMap<>(Assumption.class);
              for (Assumption assumption : Assumption.values()) {
                told.put(assumption, places.get(told.size()));
              }
              return new Draw(told);
            });
  }

  /** A plate over a zone in pieces, of which it is told between which holes the zone lies. */
  private static Sketch overZone(double length, int near, int far) {
    return Sketches.of(
        Sketches.bridged()
            .at(
                "/injury",
                "{pattern: 'multifragmentary', zone: {fromMm: "
                    + (180 - length / 2)
                    + ", toMm: "
                    + (180 + length / 2)
                    + "}}")
            .at(
                "/operations/0/fixation/0",
                "{place: {zoneBetweenHoles: ["
                    + near
                    + ", "
                    + far
                    + "], firstHoleMm: null}, screws: [{at: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], type:"
                    + " 'cortical', diameterMm: 4.5, cortices: 2, track: 'fresh'}]}"));
  }

  @Property(tries = 300)
  void screws_never_lie_in_the_gap_and_holes_lie_on_their_side(
      @ForAll("anywhere") Draw draw,
      @ForAll @DoubleRange(min = 0.5, max = 90) double length,
      @ForAll @IntRange(min = 2, max = 5) int near,
      @ForAll @IntRange(min = 1, max = 3) int over) {
    Sketch sketch = overZone(length, near, near + over);
    FixedBone fixed = new Builder(sketch, draw).build(List.of());
    double end = fixed.fracture().gap() / 2;
    List<Double> levels = fixed.plates().get(0).holes();
    assertThat(fixed.screws()).allMatch(screw -> Math.abs(screw.at()) > end);
    assertThat(fixed.screws()).allMatch(screw -> levels.contains(screw.at()));
    assertThat(levels).isSorted().doesNotHaveDuplicates();
    for (int i = 0; i < levels.size(); i++) {
      HoleSide side = sketch.plates().get(0).holes().get(i).side();
      assertThat(side != HoleSide.NEAR || levels.get(i) < -end).isTrue();
      assertThat(side != HoleSide.FAR || levels.get(i) > end).isTrue();
    }
    assertThat(levels.get(0)).isGreaterThan(-fixed.shaft().proximal() - end);
    assertThat(levels.get(levels.size() - 1)).isLessThan(fixed.shaft().distal() + end);
  }

  @Property(tries = 200)
  void a_pressed_screw_never_pulls_more_than_three_fifths_of_what_strips_it(
      @ForAll("anywhere") Draw draw,
      @ForAll @DoubleRange(min = 2.7, max = 6.5) double diameter,
      @ForAll @IntRange(min = 1, max = 2) int cortices) {
    Sketch sketch =
        Sketches.of(
            CaseText.plated()
                .at("/bone", "{quality: [{method: 'cortical-thickness', value: 2.5}]}")
                .at(
                    "/operations/0/fixation/0",
                    "{screws: [{at: [1, 3, 8, 10], type: 'cortical', track: 'fresh', diameterMm: "
                        + diameter
                        + ", cortices: "
                        + cortices
                        + "}]}"));
    FixedBone fixed = new Builder(sketch, draw).build(List.of());
    double strength = fixed.shaft().shearStrength().orElseThrow();
    assertThat(fixed.screws()).hasSize(4);
    for (PlateScrew screw : fixed.screws()) {
      double strips =
          new PullOut(screw.major(), screw.core(), screw.pitch())
              .capacity(strength, fixed.shaft().section().wall() * (screw.near() + screw.far()));
      double clamp = ((PlateScrew.Head.Pressed) screw.head()).force();
      assertThat(clamp).isPositive().isLessThanOrEqualTo(0.6 * strips * (1 + 1e-12));
      assertThat(clamp).isLessThanOrEqualTo(3000 * Math.pow(diameter / 4.5, 2) * (1 + 1e-12));
    }
  }

  @Property(tries = 200)
  void a_strut_lies_within_the_canal_and_the_bone(
      @ForAll("anywhere") Draw draw,
      @ForAll @DoubleRange(min = 4, max = 20) double canal,
      @ForAll @IntRange(min = 0, max = 170) int from,
      @ForAll @IntRange(min = 190, max = 360) int to) {
    String plate = CaseText.plated().tree().at("/operations/0/fixation/0").toString();
    Sketch sketch =
        Sketches.of(
            CaseText.plated()
                .at("/bone", "{sections: [{atMm: 180, outerMm: 24, canalMm: " + canal + "}]}")
                .at(
                    "/operations/0",
                    "{fixation: ["
                        + plate
                        + ", {kind: 'strut', id: 's', where: 'intramedullary', fromMm: "
                        + from
                        + ", toMm: "
                        + to
                        + "}]}"));
    FixedBone fixed = new Builder(sketch, draw).build(List.of());
    BoneStrut strut = fixed.strut().orElseThrow();
    double end = fixed.fracture().gap() / 2;
    assertThat(strut.section().outer()).isLessThanOrEqualTo(fixed.shaft().section().inner());
    assertThat(strut.section().inner()).isPositive().isLessThan(strut.section().outer());
    assertThat(strut.from()).isBetween(-fixed.shaft().proximal() - end, -end);
    assertThat(strut.to()).isBetween(end, fixed.shaft().distal() + end);
  }

  @Property(tries = 200)
  void a_lag_screw_makes_one_bone_only_while_the_ends_stay_pressed(
      @ForAll("anywhere") Draw draw, @ForAll @DoubleRange(min = 0, max = 2) double share) {
    Builder builder = new Builder(LAGGED, draw);
    double opens = builder.lagOpens() * 1000;
    Load load = Load.bendingY(share * opens);
    assertThat(opens).isPositive();
    if (Math.abs(share - 1) > 1e-9) {
      assertThat(builder.lagged(List.of(load))).isEqualTo(share < 1);
      assertThat(builder.lagged(List.of(Load.bendingX(-share * opens)))).isEqualTo(share < 1);
    }
    assertThat(builder.build(List.of(load)).fracture().filling())
        .isInstanceOf(
            builder.lagged(List.of(load))
                ? Fracture.Filling.Layer.class
                : Fracture.Filling.Touching.class);
    assertThat(builder.build(List.of(load)).compression()).isEmpty();
  }

  @Test
  void a_lag_screw_opens_at_force_over_area_against_bending() {
    // Half way between 100 and 3000 N: 1550 N. A tube of 24 and 10 mm: 373.85 mm², 15 795 mm⁴.
    // 1550 / 373.85 x 15795 / 12 = 5457 N·mm.
    assertThat(new Builder(LAGGED, Draw.MIDDLE).lagOpens()).isCloseTo(5.457, within(0.005));
  }

  @Test
  void a_pull_parts_what_a_lag_screw_pressed() {
    Builder builder = new Builder(LAGGED, Draw.MIDDLE);
    assertThat(builder.lagged(List.of(Load.axial(1549)))).isTrue();
    assertThat(builder.lagged(List.of(Load.axial(1551)))).isFalse();
    assertThat(builder.lagged(List.of(Load.axial(1549), Load.axial(1551)))).isFalse();
  }

  @Property(tries = 100)
  void a_plate_that_presses_acts_between_the_core_of_the_bone_and_its_surface(
      @ForAll("anywhere") Draw draw) {
    FixedBone fixed = new Builder(Sketches.of(CaseText.plated()), draw).build(List.of());
    double core = fixed.shaft().section().coreRadius();
    assertThat(fixed.fracture().gap()).isZero();
    assertThat(fixed.compression().orElseThrow().force()).isBetween(300.0, 1200.0);
    assertThat(fixed.compression().orElseThrow().towardsPlate())
        .isBetween(core, fixed.shaft().section().outer() / 2);
  }

  @Property(tries = 100)
  void an_open_gap_is_never_pressed(@ForAll("anywhere") Draw draw) {
    FixedBone fixed = new Builder(Sketches.of(Sketches.bridged()), draw).build(List.of());
    assertThat(fixed.fracture().gap()).isEqualTo(2);
    assertThat(fixed.compression()).isEmpty();
    assertThat(fixed.fracture().filling()).isInstanceOf(Fracture.Filling.Touching.class);
  }
}
