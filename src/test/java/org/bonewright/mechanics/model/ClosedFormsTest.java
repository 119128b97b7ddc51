package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;

/** Constructs so simple that a formula tells their answer. */
class ClosedFormsTest {

  private static final Material RIGID = Material.isotropic(1.5e9, 0.3);
  private static final Material TITANIUM = Material.isotropic(110_000, 0.34);
  private static final Filling OPEN = new Filling.Nothing();
  private static final double RADIUS = Constructs.TUBE.outer() / 2;
  private static final double E = RADIUS + 0.5 + Constructs.PLATE.thickness() / 2;
  private static final double FREE = 40;
  private static final double STIFF = Constructs.STEEL.young() * Constructs.PLATE.weak();

  @Test
  void a_tube_that_is_whole_twists_as_a_tube() {
    FixedBone bone =
        bone(Constructs.BONE, new Fracture(0.1, new Filling.Layer(Constructs.BONE)), none());
    double torsion = Constructs.BONE.shear() * Constructs.TUBE.torsion() / 250.1;
    double told = new MechanicalModel(bone).stiffness().orElseThrow().torsion();
    assertThat(told).isCloseTo(torsion / 1000 * Math.PI / 180, percent(told, 0.01));
  }

  @Test
  void a_plate_between_rigid_bones_bends_by_its_own_length() {
    GapMovement gap = gap(plated(RIGID, -60, -20, 20, 60), Load.bendingY(2500));
    double turn = 2500 * FREE / STIFF;
    assertThat(gap.near()).isCloseTo(turn * (E - RADIUS), percent(gap.near(), 1));
    assertThat(gap.far()).isCloseTo(turn * (E + RADIUS), percent(gap.far(), 1));
  }

  @Test
  void pulled_between_rigid_bones_it_stretches_and_bends_by_its_distance_from_the_axis() {
    GapMovement gap = gap(plated(RIGID, -60, -20, 20, 60), Load.axial(-200));
    double stretch = -200 * FREE / (Constructs.STEEL.young() * Constructs.PLATE.area());
    double turn = -200 * E * FREE / STIFF;
    assertThat(gap.near()).isCloseTo(stretch + turn * (E - RADIUS), percent(gap.near(), 1));
    assertThat(gap.far()).isCloseTo(stretch + turn * (E + RADIUS), percent(gap.far(), 1));
  }

  /**
   * A screw does not keep the plate from turning about it, so that two of them carry the moment as
   * a couple, and the plate bends on between them, as a beam on two supports.
   */
  @Test
  void across_it_bends_about_its_strong_axis_as_far_as_the_second_screws() {
    LoadAnswer answer = answer(plated(RIGID, -60, -20, 20, 60), Load.bendingX(1000));
    BeamStiffness beam = Constructs.PLATE.of(Constructs.STEEL);
    double turn = 1000 * ((FREE + 2 * 40.0 / 3) / beam.strong() + 2 / (40 * beam.shearStrong()));
    assertThat(answer.end().rx()).isCloseTo(turn, percent(turn, 0.1));
  }

  @Test
  void twisted_it_turns_the_bone_about_itself() {
    LoadAnswer answer = answer(plated(RIGID, -60, -20, 20, 60), Load.torque(1500));
    double turn = 1500 * FREE / (Constructs.STEEL.shear() * Constructs.PLATE.torsion());
    assertThat(answer.end().rz()).isCloseTo(turn, percent(turn, 1));
    assertThat(answer.gap().shear()).isCloseTo(turn * (E + RADIUS), percent(turn * E, 1));
  }

  @Test
  void a_nail_between_rigid_bones_and_bolts_gives_by_its_own_length() {
    FixedBone bone = nailed();
    double length = 165;
    HollowCircle nail = HollowCircle.solid(9);
    LoadAnswer bent = answer(bone, Load.bendingY(2500));
    assertThat(bent.end().ry())
        .isCloseTo(2500 * length / (110_000 * nail.weak()), percent(bent.end().ry(), 1));
    // About the bolts two of them carry the moment as a couple: 40 and 20 mm between them.
    BeamStiffness beam = nail.of(TITANIUM);
    double across =
        1000 * ((length + 60.0 / 3) / beam.strong() + (1.0 / 40 + 1.0 / 20) / beam.shearStrong());
    assertThat(answer(bone, Load.bendingX(1000)).end().rx())
        .isCloseTo(across, percent(across, 0.1));
    double twist = 1500 * length / (TITANIUM.shear() * nail.torsion());
    assertThat(answer(bone, Load.torque(1500)).end().rz()).isCloseTo(twist, percent(twist, 1));
    double pressed = -200 * length / (110_000 * nail.area());
    assertThat(answer(bone, Load.axial(-200)).gap().far()).isCloseTo(pressed, percent(pressed, 1));
  }

  /** So many rigid screws that plate and bone slide on each other nowhere. */
  @Test
  void a_plate_that_cannot_slide_on_whole_bone_is_one_section_with_it() {
    double[] screws = DoubleStream.iterate(-101, at -> at <= 101, at -> at + 2).toArray();
    FixedBone bone =
        bone(
            Constructs.BONE,
            new Fracture(0, new Filling.Layer(Constructs.BONE)),
            new Part(List.of(plate(List.of(31.0))), screws(screws)));
    double own = 15_000 * Constructs.TUBE.weak() + STIFF;
    double bones = 15_000 * Constructs.TUBE.area();
    double plates = Constructs.STEEL.young() * Constructs.PLATE.area();
    double both = bones * plates / (bones + plates);
    double curve = 2500 / (own + both * E * E);
    PlateCut cut = cut(answer(bone, Load.bendingY(2500)), 31);
    assertThat(cut.axial()).isCloseTo(-curve * E * both, percent(cut.axial(), 1));
    assertThat(cut.weak()).isCloseTo(curve * STIFF, percent(cut.weak(), 1));
    // Pressed on the axis of the bone, which lies beside the axis of the whole, it bends as well.
    double moment = 200 * E * both / bones;
    double share = -200 * plates / (bones + plates) + moment / 2500 * curve * E * both;
    PlateCut pressed = cut(answer(bone, Load.axial(-200)), 31);
    assertThat(pressed.axial()).isCloseTo(share, percent(share, 1));
  }

  @Test
  void closed_ends_open_beyond_the_opening_moment_and_not_before() {
    FixedBone bone =
        Constructs.pressed(
            Constructs.plated(
                0, new Filling.Touching(0), new Head.Locked(), -90, -54, -18, 18, 54, 90),
            800,
            0);
    double opening = 1000 * new MechanicalModel(bone).openingMoment().orElseThrow();
    assertThat(closed(bone, 0.98 * opening)).isEqualTo(1);
    // The outermost ring of points lies 0.6 mm within the surface: it opens a little later.
    assertThat(closed(bone, 1.1 * opening)).isLessThan(1);
  }

  private static double closed(FixedBone bone, double moment) {
    return answer(bone, Load.bendingY(moment)).contact().orElseThrow().closed();
  }

  private record Part(List<MetalPlate> plates, List<PlateScrew> screws) {}

  private static Part none() {
    return new Part(List.of(), List.of());
  }

  private static MetalPlate plate(List<Double> holes) {
    return new MetalPlate(Constructs.STEEL, Constructs.PLATE, 0.5, 5.2, holes, 0);
  }

  private static List<PlateScrew> screws(double... levels) {
    return DoubleStream.of(levels)
        .mapToObj(
            at ->
                new PlateScrew(
                    0, at, Constructs.STEEL, 4.3, 5, 1, 1, 1, new Head.Locked(), true, false))
        .toList();
  }

  private static FixedBone plated(Material material, double... levels) {
    return bone(
        material, new Fracture(4, OPEN), new Part(List.of(plate(List.of())), screws(levels)));
  }

  private static FixedBone bone(Material material, Fracture fracture, Part part) {
    return new FixedBone(
        new Shaft(material, Constructs.TUBE, 140, 110, OptionalDouble.empty()),
        fracture,
        part.plates(),
        part.screws(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static FixedBone nailed() {
    FixedBone bone = bone(RIGID, new Fracture(4, OPEN), none());
    List<MetalNail.Bolt> bolts =
        DoubleStream.of(-120, -80, 85, 105)
            .mapToObj(at -> new MetalNail.Bolt(at, 0, TITANIUM, 4.5, true, true, false))
            .toList();
    return new FixedBone(
        bone.shaft(),
        bone.fracture(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.of(new MetalNail(TITANIUM, HollowCircle.solid(9), bolts, List.of())),
        Optional.empty());
  }

  private static Offset<Double> percent(double of, double percent) {
    return within(Math.abs(of) * percent / 100);
  }

  private static GapMovement gap(FixedBone bone, Load load) {
    return answer(bone, load).gap();
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }

  private static PlateCut cut(LoadAnswer answer, double level) {
    return answer.plates().get(0).stream()
        .filter(cut -> cut.z() == level)
        .findFirst()
        .orElseThrow();
  }
}
