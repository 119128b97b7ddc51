package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;

class MechanicalModelTest {

  private static final Head LOCKED = new Head.Locked();
  private static final Filling OPEN = new Filling.Nothing();
  private static final Filling TOUCHING = new Filling.Touching(0);
  private static final double E = 12 + 0.5 + 2.1;

  @Test
  void over_an_open_gap_the_plate_carries_the_whole_load_whatever_the_stiffness() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, -90, -54, -18, 18, 54, 90);
    PlateCut cut = atFracture(answer(bone, new Load(-200, 0, 0, 700, 2500, 900)));
    assertThat(cut.axial()).isCloseTo(-200, within(1e-4));
    assertThat(cut.weak()).isCloseTo(2500 - E * 200, within(1e-3));
    assertThat(cut.strong()).isCloseTo(700, within(1e-3));
    assertThat(cut.torque()).isCloseTo(900, within(1e-3));
  }

  @Test
  void shear_at_the_fracture_is_carried_without_a_moment_there() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, -90, -54, -18, 18, 54, 90);
    PlateCut cut = atFracture(answer(bone, new Load(0, 50, 30, 0, 0, 0)));
    assertThat(cut.away()).isCloseTo(50, within(1e-4));
    assertThat(cut.across()).isCloseTo(30, within(1e-4));
    assertThat(cut.weak()).isCloseTo(0, within(1e-2));
    // A force across acts on the plate at the distance of its axis: it twists it.
    assertThat(Math.abs(cut.torque())).isCloseTo(E * 30, within(1e-2));
  }

  @Test
  void a_gap_filled_with_bone_and_no_plate_is_the_intact_bone() {
    Shaft shaft = new Shaft(Constructs.BONE, Constructs.TUBE, 100, 100, OptionalDouble.empty());
    FixedBone bone =
        new FixedBone(
            shaft,
            new Fracture(0.1, new Filling.Layer(Constructs.BONE)),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Stiffness stiff = new MechanicalModel(bone).stiffness().orElseThrow();
    double length = 200.1;
    assertThat(stiff.axial()).isCloseTo(15_000 * Constructs.TUBE.area() / length, within(1.0));
    double bending = 15_000 * Constructs.TUBE.weak() / length / 1000 * Math.PI / 180;
    assertThat(stiff.bendingWeakPlus()).isCloseTo(bending, within(bending * 1e-4));
    assertThat(stiff.bendingStrong()).isCloseTo(bending, within(bending * 1e-4));
  }

  @Test
  void a_fragment_that_spins_about_its_only_screw_gets_no_answer() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, -54, -18, 18);
    MechanicalModel model = new MechanicalModel(bone);
    assertThat(model.under(Load.bendingX(1000))).isInstanceOf(Outcome.None.class);
    assertThat(model.stiffness()).isEmpty();
    assertThat(model.under(Load.bendingY(2500))).isInstanceOf(Outcome.Answered.class);
  }

  @Test
  void a_longer_free_plate_is_softer_in_every_direction() {
    Stiffness near = stiffness(Constructs.plated(4, OPEN, LOCKED, -90, -54, -18, 18, 54, 90));
    Stiffness far = stiffness(Constructs.plated(4, OPEN, LOCKED, -90, -54, 54, 90));
    assertThat(far.axial()).isLessThan(near.axial());
    assertThat(far.bendingWeakPlus()).isLessThan(near.bendingWeakPlus());
    assertThat(far.bendingStrong()).isLessThan(near.bendingStrong());
    assertThat(far.torsion()).isLessThan(near.torsion());
  }

  @Test
  void turning_plate_and_load_together_changes_nothing() {
    FixedBone here = Constructs.plated(4, OPEN, LOCKED, -90, -54, 54, 90);
    FixedBone turned = Constructs.turned(90, 4, OPEN, LOCKED, -90, -54, 54, 90);
    LoadAnswer one = answer(here, Load.bendingY(1000));
    LoadAnswer two = answer(turned, Load.bendingX(-1000));
    assertThat(two.end().rx()).isCloseTo(-one.end().ry(), within(1e-9));
    assertThat(atFracture(two).weak()).isCloseTo(atFracture(one).weak(), within(1e-3));
  }

  @Test
  void closed_ends_push_and_do_not_pull() {
    FixedBone bone = Constructs.plated(0, TOUCHING, LOCKED, -90, -54, -18, 18, 54, 90);
    LoadAnswer pressed = answer(bone, Load.axial(-500));
    LoadAnswer pulled = answer(bone, Load.axial(500));
    assertThat(pressed.contact().orElseThrow().force()).isPositive();
    assertThat(pulled.contact().orElseThrow().force()).isLessThan(500);
    assertThat(-pressed.end().dz()).isLessThan(pulled.end().dz());
  }

  @Test
  void the_far_cortex_opens_when_the_side_of_the_plate_is_pressed() {
    FixedBone bone = Constructs.plated(0, TOUCHING, LOCKED, -90, -54, -18, 18, 54, 90);
    LoadAnswer plus = answer(bone, Load.bendingY(5000));
    LoadAnswer minus = answer(bone, Load.bendingY(-5000));
    assertThat(plus.gap().far()).isGreaterThan(plus.gap().near()).isPositive();
    // With the plate on the side under tension the bone takes the pressure: far stiffer.
    assertThat(Math.abs(minus.end().ry())).isLessThan(0.5 * plus.end().ry());
    assertThat(peak(minus)).isLessThan(peak(plus));
  }

  @Test
  void ends_never_close_further_than_the_gap() {
    FixedBone bone = Constructs.plated(1, TOUCHING, LOCKED, -90, -72, 72, 90);
    LoadAnswer answer = answer(bone, Load.axial(-3000));
    assertThat(answer.gap().min()).isGreaterThan(-1.05);
    assertThat(answer.contact().orElseThrow().closed()).isPositive();
  }

  @Test
  void compression_is_there_as_wanted_and_carried_by_the_plate() {
    double kern = Constructs.TUBE.coreRadius();
    FixedBone bone =
        Constructs.pressed(
            Constructs.plated(0, TOUCHING, LOCKED, -90, -54, -18, 18, 54, 90), 800, 0);
    LoadAnswer answer = answer(bone, Load.axial(0));
    assertThat(answer.contact().orElseThrow().force()).isCloseTo(800, within(1.0));
    assertThat(answer.contact().orElseThrow().closed()).isCloseTo(1, within(1e-9));
    assertThat(atFracture(answer).axial()).isCloseTo(800, within(1.0));
    assertThat(atFracture(answer).weak()).isCloseTo(800 * E, within(20.0));
    double middle = new MechanicalModel(bone).openingMoment().orElseThrow();
    double atKern =
        new MechanicalModel(Constructs.pressed(bone, 800, kern)).openingMoment().orElseThrow();
    double straight =
        new MechanicalModel(Constructs.pressed(bone, 800, 12)).openingMoment().orElseThrow();
    assertThat(middle).isPositive();
    assertThat(atKern).isCloseTo(0, within(0.01));
    assertThat(straight).isNegative();
  }

  @Test
  void the_opening_moment_is_near_that_of_plane_sections() {
    FixedBone bone =
        Constructs.pressed(
            Constructs.plated(0, TOUCHING, LOCKED, -90, -54, -36, 36, 54, 90), 800, 0);
    double bend1 = 15_000 * Constructs.TUBE.weak();
    double bend2 = 193_000 * Constructs.PLATE.weak();
    double a1 = 15_000 * Constructs.TUBE.area();
    double a2 = 193_000 * Constructs.PLATE.area();
    double xn = a2 * E / (a1 + a2);
    double whole = bend1 + bend2 + a1 * a2 / (a1 + a2) * E * E;
    double tension = (12 + xn) * 15_000 / whole;
    double plane = 800 / Constructs.TUBE.area() / tension / 1000;
    assertThat(new MechanicalModel(bone).openingMoment().orElseThrow())
        .isCloseTo(plane, within(0.25 * plane));
  }

  @Test
  void a_strut_takes_load_off_the_plate() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, -90, -54, -18, 18, 54, 90);
    FixedBone strutted =
        new FixedBone(
            bone.shaft(),
            bone.fracture(),
            bone.plates(),
            bone.screws(),
            Optional.of(
                new BoneStrut(
                    Material.isotropic(17_000, 0.3), new HollowCircle(10.5, 5.5), -70, 75)),
            Optional.empty(),
            Optional.empty());
    Load pressed = Load.axial(-200);
    Load bent = Load.bendingY(2500);
    assertThat(peak(answer(strutted, pressed))).isLessThan(0.5 * peak(answer(bone, pressed)));
    assertThat(peak(answer(strutted, bent))).isLessThan(0.5 * peak(answer(bone, bent)));
    assertThat(stiffness(strutted).axial()).isGreaterThan(stiffness(bone).axial());
  }

  @Test
  void a_nail_alone_bridges_the_gap() {
    Material titanium = Material.isotropic(110_000, 0.34);
    List<MetalNail.Bolt> bolts =
        List.of(
            new MetalNail.Bolt(-120, 0, titanium, 4.5, false, false, false),
            new MetalNail.Bolt(-80, 0, titanium, 4.5, false, false, false),
            new MetalNail.Bolt(85, 0, titanium, 4.5, false, false, false),
            new MetalNail.Bolt(105, 0, titanium, 4.5, false, false, false));
    FixedBone bone =
        new FixedBone(
            new Shaft(Constructs.BONE, Constructs.TUBE, 140, 110, OptionalDouble.empty()),
            new Fracture(4, OPEN),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.of(new MetalNail(titanium, new HollowCircle(9, 0), bolts, List.of())),
            Optional.empty());
    Stiffness stiff = stiffness(bone);
    double nailOnly = 110_000 * HollowCircle.solid(9).area() / 165;
    assertThat(stiff.axial()).isPositive().isLessThan(nailOnly);
    assertThat(stiff.torsion()).isPositive();
  }

  @Test
  void a_pressed_screw_slips_where_its_friction_ends() {
    FixedBone bone =
        Constructs.plated(4, OPEN, new Head.Pressed(300, 5, 0.3), -90, -54, -18, 18, 54, 90);
    LoadAnswer light = answer(bone, Load.axial(-5));
    LoadAnswer heavy = answer(bone, Load.axial(-1500));
    assertThat(light.events()).isEmpty();
    assertThat(heavy.events()).extracting(event -> event.what()).contains("tilt", "slip");
    assertThat(heavy.events()).isSortedAccordingTo((a, b) -> Double.compare(a.load(), b.load()));
    assertThat(Math.abs(heavy.end().dz() / 1500)).isGreaterThan(Math.abs(light.end().dz() / 5));
  }

  @Test
  void forces_of_all_screws_on_one_side_balance_the_load() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, -90, -54, -18, 18, 54, 90);
    LoadAnswer answer = answer(bone, Load.axial(-300));
    double side =
        answer.screws().stream().filter(s -> s.at() > 0).mapToDouble(ScrewDemand::pullOff).sum();
    assertThat(side).isCloseTo(0, within(1e-3)); // nothing pulls the plate off as a whole
    assertThat(answer.screws()).allSatisfy(s -> assertThat(s.capacity()).isPresent());
  }

  @Test
  void without_anything_across_the_gap_there_is_no_answer() {
    FixedBone bone = Constructs.plated(4, OPEN, LOCKED, 18, 54, 90);
    assertThat(new MechanicalModel(bone).under(Load.axial(-100))).isInstanceOf(Outcome.None.class);
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }

  private static Stiffness stiffness(FixedBone bone) {
    return new MechanicalModel(bone).stiffness().orElseThrow();
  }

  private static PlateCut atFracture(LoadAnswer answer) {
    return answer.plates().get(0).stream().filter(c -> c.z() == 0).findFirst().orElseThrow();
  }

  private static double peak(LoadAnswer answer) {
    return answer.plates().get(0).stream().mapToDouble(PlateCut::equivalent).max().orElseThrow();
  }
}
