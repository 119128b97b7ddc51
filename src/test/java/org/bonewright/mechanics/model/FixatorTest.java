package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.bonewright.mechanics.answer.FixatorAnswer;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PinDemand;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** An external fixator on one side: closed forms and balance. */
class FixatorTest {

  private static final Material RIGID = Material.isotropic(1.5e9, 0.3);
  private static final double RADIUS = Constructs.TUBE.outer() / 2;
  private static final double DISTANCE = 50;
  private static final double E = RADIUS + DISTANCE;
  private static final double FREE = 80;

  private static Offset<Double> percent(double of, double percent) {
    return within(Math.abs(of) * percent / 100);
  }

  @Nested
  class A_bar_on_rigid_pins_in_rigid_bone {

    private final Fixators frame = Fixators.USUAL.in(RIGID).firm();
    private final BeamStiffness rod = Fixators.ROD.of(Fixators.CARBON);

    @Test
    void bends_in_its_plane_by_its_own_length() {
      GapMovement gap = frame.under(Load.bendingY(2500)).gap();
      double turn = 2500 * FREE / rod.weak();
      assertThat(gap.near()).isCloseTo(turn * (E - RADIUS), percent(gap.near(), 1));
      assertThat(gap.far()).isCloseTo(turn * (E + RADIUS), percent(gap.far(), 1));
    }

    @Test
    void bends_under_a_force_by_its_distance_from_the_axis_of_the_bone() {
      GapMovement gap = frame.under(Load.axial(-200)).gap();
      double turn = -200 * E * FREE / rod.weak();
      double stretch = -200 * FREE / rod.axial();
      assertThat(gap.near()).isCloseTo(stretch + turn * (E - RADIUS), percent(gap.near(), 1));
      assertThat(gap.far()).isCloseTo(stretch + turn * (E + RADIUS), percent(gap.far(), 1));
    }

    /** A pin can turn in the bone, so that two of them carry the moment as a couple. */
    @Test
    void bends_across_on_as_far_as_the_second_pins() {
      double turn = 1000 * ((FREE + 2 * 40.0 / 3) / rod.strong() + 2 / (40 * rod.shearStrong()));
      assertThat(frame.under(Load.bendingX(1000)).end().rx()).isCloseTo(turn, percent(turn, 0.5));
    }

    @Test
    void twists_by_its_own_length() {
      double turn = 1500 * FREE / rod.torsion();
      assertThat(frame.under(Load.torque(1500)).end().rz()).isCloseTo(turn, percent(turn, 1));
    }

    @Test
    void shares_a_moment_equally_with_a_second_bar_that_pins_hold_parallel_to_it() {
      Fixators two = frame.barsAt(DISTANCE, DISTANCE + 20).pins(20);
      // Both bend alike, and as far as they lie apart they stretch and shorten against each other.
      double together = 2 * rod.weak() + rod.axial() * 2 * 10 * 10;
      double turn = 2500 * FREE / together;
      assertThat(two.under(Load.bendingY(2500)).end().ry()).isCloseTo(turn, percent(turn, 1));
    }
  }

  @Test
  void pins_that_bend_between_a_rigid_bar_and_rigid_bone_give_as_beams_held_at_both_ends() {
    Fixators frame = Fixators.USUAL.in(RIGID).of(RIGID).core(1);
    double length = E - Constructs.TUBE.middleRadius();
    BeamStiffness pin = HollowCircle.solid(5).of(Constructs.STEEL);
    double sway = 2 / (Math.pow(length, 3) / 12 / pin.weak() + length / pin.shearWeak());
    double turning = 2 * pin.weak() / length + 2 * pin.axial() / length * 20 * 20;
    double arm = Constructs.TUBE.middleRadius() + length / 2;
    double moves = -200 * 2 * (1 / sway + arm * arm / turning);
    assertThat(frame.under(Load.axial(-200)).end().dz()).isCloseTo(moves, percent(moves, 0.5));
  }

  @Test
  void the_bars_carry_all_of_the_load_over_an_open_gap() {
    Random random = new Random(11);
    for (int i = 0; i < 20; i++) {
      double azimuth = random.nextDouble(-180, 180);
      Load load =
          new Load(
              random.nextDouble(-300, 300),
              0,
              0,
              random.nextDouble(-2000, 2000),
              random.nextDouble(-2000, 2000),
              random.nextDouble(-2000, 2000));
      FixatorAnswer borne =
          Fixators.USUAL.barsAt(40, 60).facing(azimuth).under(load).fixator().orElseThrow();
      double axial = 0;
      double bendingX = 0;
      double bendingY = 0;
      for (int bar = 0; bar < 2; bar++) {
        TubeCut cut = atLine(borne.bars().get(bar));
        double from = RADIUS + 40 + 20 * bar;
        axial += cut.axial();
        bendingX += cut.bendingX() + from * Math.sin(Math.toRadians(azimuth)) * cut.axial();
        bendingY += cut.bendingY() - from * Math.cos(Math.toRadians(azimuth)) * cut.axial();
      }
      assertThat(axial).isCloseTo(load.axial(), within(1e-2));
      assertThat(bendingX).isCloseTo(load.bendingX(), within(0.5));
      assertThat(bendingY).isCloseTo(load.bendingY(), within(0.5));
    }
  }

  private static TubeCut atLine(List<TubeCut> cuts) {
    return cuts.stream().filter(cut -> cut.z() == 0).findFirst().orElseThrow();
  }

  @Test
  void a_pin_is_stressed_most_at_its_core_in_the_near_cortex_or_at_the_clamp() {
    LoadAnswer answer = Fixators.USUAL.under(Load.axial(-200));
    for (PinDemand pin : answer.fixator().orElseThrow().pins()) {
      double atBone =
          32 * pin.momentAtBone() / (Math.PI * 64) + Math.abs(pin.pull()) * 4 / (Math.PI * 16);
      double atClamp =
          32 * pin.momentAtClamp() / (Math.PI * 125) + Math.abs(pin.pull()) * 4 / (Math.PI * 25);
      assertThat(pin.bendingStress())
          .isCloseTo(Math.max(atBone, atClamp), percent(pin.bendingStress(), 0.01));
    }
  }
}
