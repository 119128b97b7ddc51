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
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.hold.PullOut;
import org.junit.jupiter.api.Test;

/** Constructs in numbers, under any set of assumptions. */
class BuilderTest {

  /** A lag screw and a neutral plate, pressed together by 100 to 3000 N. */
  private static final CaseText PRESSED =
      CaseText.plated()
          .at("/operations/0", "{compression: {method: 'lag-screw'}, reduction: {gapFarMm: 0}}");

  private static final Sketch LAGGED = Sketches.of(PRESSED);

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
    FixedBone fixed = new Builder(sketch, draw).build();
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
    FixedBone fixed = new Builder(sketch, draw).build();
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
    FixedBone fixed = new Builder(sketch, draw).build();
    BoneStrut strut = fixed.strut().orElseThrow();
    double end = fixed.fracture().gap() / 2;
    assertThat(strut.section().outer()).isLessThanOrEqualTo(fixed.shaft().section().inner());
    assertThat(strut.section().inner()).isPositive().isLessThan(strut.section().outer());
    assertThat(strut.from()).isBetween(-fixed.shaft().proximal() - end, -end);
    assertThat(strut.to()).isBetween(end, fixed.shaft().distal() + end);
  }

  @Property(tries = 100)
  void a_lag_screw_presses_by_itself_and_no_harder_than_its_thread_bears(
      @ForAll("anywhere") Draw draw) {
    FixedBone fixed = new Builder(LAGGED, draw).build();
    LaggedScrew lag = fixed.beside().lags().get(0);
    double strips =
        new PullOut(lag.major(), lag.core(), lag.pitch())
            .capacity(fixed.shaft().shearStrength().orElseThrow(), fixed.shaft().section().wall());
    assertThat(fixed.compression()).isEmpty();
    assertThat(lag.force()).isBetween(100.0, 3000.0).isLessThanOrEqualTo(0.6 * strips);
    assertThat(lag.head().at()).isNegative();
    assertThat(lag.thread().at()).isPositive();
  }

  @Test
  void a_lag_screw_lies_at_its_angle_to_the_line_and_as_long_as_the_bone_is_wide() {
    LaggedScrew lag =
        new Builder(told(", angleToLineDeg: 60, diameterMm: 3.5"), Draw.MIDDLE)
            .build()
            .beside()
            .lags()
            .get(0);
    double along = lag.thread().at() - lag.head().at();
    double aside = lag.head().out() - lag.thread().out();
    assertThat(Math.toDegrees(Math.atan2(along, aside))).isCloseTo(60, within(1e-9));
    assertThat(Math.hypot(along, aside)).isCloseTo(24, within(1e-9));
    assertThat(lag.core()).isEqualTo(2.4);
  }

  @Test
  void a_screw_along_the_line_still_has_its_ends_in_both_fragments() {
    LaggedScrew lag =
        new Builder(told(", angleToLineDeg: 0"), Draw.MIDDLE).build().beside().lags().get(0);
    assertThat(lag.head().at()).isLessThanOrEqualTo(-1);
    assertThat(lag.thread().at()).isGreaterThanOrEqualTo(1);
  }

  @Test
  void a_screw_whose_thread_holds_both_fragments_presses_nothing() {
    assertThat(
            new Builder(told(", glidingHole: 'no'"), Draw.MIDDLE)
                .build()
                .beside()
                .lags()
                .get(0)
                .force())
        .isZero();
    assertThat(
            new Builder(told(", glidingHole: 'yes'"), Draw.MIDDLE)
                .build()
                .beside()
                .lags()
                .get(0)
                .force())
        .isGreaterThan(100);
  }

  @Test
  void two_lag_screws_cross_the_line_on_either_side_of_its_middle() {
    List<LagSketch> two = told("", "").lags();
    assertThat(two).extracting(lag -> lag.crossing().middle()).containsExactly(0.125, -0.125);
  }

  @Test
  void an_open_line_has_no_lag_screws() {
    assertThat(LAGGED.notUnited().lags()).isEmpty();
    assertThat(Sketches.of(Sketches.bridged()).lags()).isEmpty();
  }

  /** A tibia pressed by lag screws, of each of which this is told. */
  private static Sketch told(String... screws) {
    String all = PRESSED.tree().at("/operations/0/fixation/0").toString();
    for (int i = 0; i < screws.length; i++) {
      all += ", {id: 'lag-" + i + "', kind: 'lag-screw'" + screws[i] + "}";
    }
    return Sketches.of(PRESSED.at("/operations/0", "{fixation: [" + all + "]}"));
  }

  @Property(tries = 100)
  void a_plate_that_presses_acts_between_the_core_of_the_bone_and_its_surface(
      @ForAll("anywhere") Draw draw) {
    FixedBone fixed = new Builder(Sketches.of(CaseText.plated()), draw).build();
    double core = fixed.shaft().section().coreRadius();
    assertThat(fixed.fracture().gap()).isZero();
    assertThat(fixed.compression().orElseThrow().force()).isBetween(300.0, 1200.0);
    assertThat(fixed.compression().orElseThrow().towardsPlate())
        .isBetween(core, fixed.shaft().section().outer() / 2);
  }

  @Property(tries = 100)
  void an_open_gap_is_never_pressed(@ForAll("anywhere") Draw draw) {
    FixedBone fixed = new Builder(Sketches.of(Sketches.bridged()), draw).build();
    assertThat(fixed.fracture().gap()).isEqualTo(2);
    assertThat(fixed.compression()).isEmpty();
    assertThat(fixed.fracture().filling()).isInstanceOf(Fracture.Filling.Touching.class);
  }
}
