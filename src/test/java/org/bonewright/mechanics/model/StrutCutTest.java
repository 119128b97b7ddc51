package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Over an open gap plate and strut carry everything: their resultants add up to the load. */
class StrutCutTest {

  /** From the axis of the bone to that of the plate: 24 / 2 + 0.5 + 4.2 / 2 mm. */
  private static final double TO_PLATE = 14.6;

  static Stream<Load> loads() {
    return Stream.of(
        Load.axial(-500),
        Load.bendingY(4000),
        Load.bendingY(-4000),
        Load.bendingX(4000),
        Load.torque(2000),
        new Load(-300, 0, 0, 2500, 3500, -1500));
  }

  @ParameterizedTest
  @MethodSource("loads")
  void with_the_plate_it_balances_the_load(Load load) {
    LoadAnswer answer = answer(SolidBones.of("strut"), load);
    StrutCut strut = answer.strut().orElseThrow();
    PlateCut plate =
        answer.plates().get(0).stream().filter(cut -> cut.z() == 0).findFirst().orElseThrow();
    assertThat(strut.axial() + plate.axial()).isCloseTo(load.axial(), within(0.01));
    // A pull in the plate, towards x, turns about y the way that opens the far cortex less.
    assertThat(strut.bendingY() + plate.weak() - TO_PLATE * plate.axial())
        .isCloseTo(load.bendingY(), within(1.0));
    assertThat(strut.bendingX() + plate.strong()).isCloseTo(load.bendingX(), within(1.0));
    assertThat(strut.torque() + plate.torque() + TO_PLATE * plate.across())
        .isCloseTo(load.torque(), within(1.0));
  }

  @Test
  void a_thicker_strut_carries_more_of_the_bending() {
    double thin = share(strut(6, 3, -70, 75));
    double thick = share(strut(12, 3, -70, 75));
    assertThat(thin).isBetween(0.01, thick);
    assertThat(thick).isLessThan(1);
  }

  @Test
  void a_strut_that_no_screw_holds_beyond_the_line_carries_nothing() {
    FixedBone loose = strut(10.5, 5.5, -100, 10);
    assertThat(answer(loose, Load.bendingY(4000)).strut()).isEmpty();
    FixedBone none = Constructs.plated(4, new Filling.Nothing(), new Head.Locked(), -54, -18, 18);
    assertThat(answer(none, Load.axial(-10)).strut()).isEmpty();
  }

  private static double share(FixedBone bone) {
    return answer(bone, Load.bendingX(4000)).strut().orElseThrow().bendingX() / 4000;
  }

  private static FixedBone strut(double outer, double inner, double from, double to) {
    FixedBone bone = SolidBones.of("strut");
    return new FixedBone(
        bone.shaft(),
        bone.fracture(),
        bone.plates(),
        List.copyOf(bone.screws()),
        Optional.of(
            new BoneStrut(
                Material.isotropic(17_000, 0.3), new HollowCircle(outer, inner), from, to)),
        bone.nail(),
        bone.compression());
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }
}
