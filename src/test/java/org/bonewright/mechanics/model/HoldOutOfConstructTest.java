package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.hold.PullOut;
import org.junit.jupiter.api.Test;

class HoldOutOfConstructTest {

  private static final Filling OPEN = new Filling.Nothing();

  /** Turned home but not tightened: ball joints, nothing pressed, so that statics tell the pull. */
  private static final Head LOOSE = new Head.Pressed(0, 5, 0.3);

  private static final Head TIGHT = new Head.Pressed(1500, 5, 0.3);
  private static final double STRENGTH = 52;
  private static final double THREAD = capacity(STRENGTH, 2 * Constructs.TUBE.wall());

  @Test
  void two_screws_of_a_fragment_bear_a_moment_as_a_couple() {
    FixedBone bone = Constructs.plated(4, OPEN, LOOSE, -54, -18, 18, 38);
    ConstructHoldOut told = holdOut(bone, Load.bendingY(3000));
    // 20 mm apart distally, 36 proximally: the distal couple is the larger one.
    double couple = THREAD * 20 / 3000;
    assertThat(told.loadShareAtFirst().orElseThrow()).isCloseTo(couple, within(couple * 1e-4));
    assertThat(told.holdOutShare()).isEqualTo(told.loadShareAtFirst());
    assertThat(told.screws()).hasSize(1);
    assertThat(told.screws().get(0).at()).isPositive();
    assertThat(told.unzips()).isTrue();
  }

  @Test
  void a_moment_the_other_way_pulls_the_other_screw() {
    FixedBone bone = Constructs.plated(4, OPEN, LOOSE, -54, -18, 18, 38);
    double plus = holdOut(bone, Load.bendingY(3000)).screws().get(0).at();
    double minus = holdOut(bone, Load.bendingY(-3000)).screws().get(0).at();
    assertThat(List.of(plus, minus)).containsExactlyInAnyOrder(18.0, 38.0);
  }

  @Test
  void a_far_cortex_without_thread_halves_it() {
    FixedBone both = Constructs.plated(4, OPEN, LOOSE, -54, -18, 18, 38);
    FixedBone near = withScrews(both, both.screws().stream().map(s -> shares(s, 1, 0)).toList());
    double whole = holdOut(both, Load.bendingY(3000)).loadShareAtFirst().orElseThrow();
    double half = holdOut(near, Load.bendingY(3000)).loadShareAtFirst().orElseThrow();
    assertThat(half).isCloseTo(whole / 2, within(whole * 1e-3));
  }

  @Test
  void what_is_pulled_out_carries_exactly_what_its_thread_bears() {
    FixedBone bone = Constructs.plated(4, OPEN, TIGHT, -90, -54, -18, 18, 54, 90);
    Load load = Load.bendingY(4000);
    ConstructHoldOut told = holdOut(bone, load);
    double share = told.loadShareAtFirst().orElseThrow();
    ScrewDemand first =
        answer(bone, load.times(share)).screws().stream()
            .filter(screw -> screw.at() == told.screws().get(0).at())
            .findFirst()
            .orElseThrow();
    assertThat(first.pullOff()).isCloseTo(THREAD, within(THREAD * 1e-4));
    assertThat(answer(bone, load.times(share * 0.99)).screws())
        .allSatisfy(screw -> assertThat(screw.pullOff()).isLessThan(THREAD));
  }

  @Test
  void later_screws_follow_and_the_largest_load_is_the_hold_out() {
    FixedBone bone = Constructs.plated(4, OPEN, TIGHT, -90, -54, -18, 18, 54, 90);
    ConstructHoldOut told = holdOut(bone, Load.bendingY(4000));
    assertThat(told.screws().size()).isGreaterThan(1);
    double largest =
        told.screws().stream().mapToDouble(ConstructHoldOut.Pulled::loadShare).max().orElseThrow();
    assertThat(told.holdOutShare().orElseThrow()).isGreaterThanOrEqualTo(largest);
    assertThat(told.unzips())
        .isEqualTo(told.screws().get(1).loadShare() < told.screws().get(0).loadShare());
  }

  @Property(tries = 10)
  void stronger_bone_never_lets_go_earlier(
      @ForAll @DoubleRange(min = 10, max = 50) double strength,
      @ForAll @DoubleRange(min = 1.05, max = 2) double more) {
    FixedBone bone = Constructs.plated(4, OPEN, TIGHT, -90, -54, -18, 18, 54, 90);
    Load load = new Load(-1600, 0, 0, 2000, 16_000, 3200);
    ConstructHoldOut weak = holdOut(withStrength(bone, strength), load);
    ConstructHoldOut strong = holdOut(withStrength(bone, strength * more), load);
    assertThat(strong.loadShareAtFirst().orElseThrow())
        .isGreaterThan(weak.loadShareAtFirst().orElseThrow());
  }

  @Test
  void there_is_none_for_locked_screws_or_without_the_strength_of_the_bone() {
    FixedBone locked = Constructs.plated(4, OPEN, new Head.Locked(), -54, -18, 18, 54);
    assertThat(HoldOutOfConstruct.under(locked, Load.bendingY(3000))).isEmpty();
    FixedBone pressed = Constructs.plated(4, OPEN, TIGHT, -54, -18, 18, 54);
    FixedBone unknown = withShaft(pressed, OptionalDouble.empty());
    assertThat(HoldOutOfConstruct.under(unknown, Load.bendingY(3000))).isEmpty();
  }

  @Test
  void torque_about_the_bone_pulls_no_screw_out() {
    FixedBone bone = Constructs.plated(4, OPEN, TIGHT, -54, -18, 18, 54);
    ConstructHoldOut told = holdOut(bone, Load.torque(1000));
    assertThat(told.loadShareAtFirst()).isEmpty();
    assertThat(told.holdOutShare()).isEmpty();
    assertThat(told.screws()).isEmpty();
  }

  @Test
  void the_thread_presses_on_the_near_cortex_with_the_shear_of_its_neck() {
    FixedBone bone = Constructs.plated(4, OPEN, LOOSE, -54, -18, 18, 54);
    LoadAnswer answer = answer(withShaft(bone, OptionalDouble.of(STRENGTH)), Load.axial(-300));
    for (ScrewDemand screw : answer.screws()) {
      // Nothing rubs: all shear goes through the neck.
      double pressure = screw.shear() / (4.5 * Constructs.TUBE.wall());
      assertThat(screw.bearing()).isCloseTo(pressure, within(1e-6 * pressure));
      assertThat(screw.crushed().orElseThrow()).isCloseTo(pressure / 180, within(1e-6));
    }
  }

  private static double capacity(double strength, double engaged) {
    return new PullOut(4.5, 3.0, 1.75).capacity(strength, engaged);
  }

  private static ConstructHoldOut holdOut(FixedBone bone, Load load) {
    return HoldOutOfConstruct.under(bone, load).orElseThrow();
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }

  private static FixedBone withStrength(FixedBone bone, double strength) {
    return withShaft(bone, OptionalDouble.of(strength));
  }

  private static FixedBone withShaft(FixedBone bone, OptionalDouble shear) {
    Shaft old = bone.shaft();
    Shaft shaft =
        new Shaft(
            old.material(),
            old.section(),
            old.proximal(),
            old.distal(),
            shear,
            OptionalDouble.of(180));
    return new FixedBone(
        shaft,
        bone.fracture(),
        bone.plates(),
        bone.screws(),
        bone.strut(),
        bone.nail(),
        bone.compression());
  }

  private static FixedBone withScrews(FixedBone bone, List<PlateScrew> screws) {
    return new FixedBone(
        bone.shaft(),
        bone.fracture(),
        bone.plates(),
        new ArrayList<>(screws),
        bone.strut(),
        bone.nail(),
        bone.compression());
  }

  private static PlateScrew shares(PlateScrew screw, double near, double far) {
    return new PlateScrew(
        screw.plate(),
        screw.at(),
        screw.material(),
        screw.core(),
        screw.major(),
        screw.pitch(),
        near,
        far,
        screw.head(),
        screw.rigid(),
        screw.stiffens());
  }
}
