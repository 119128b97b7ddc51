package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.Beside;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.OnlayStrut;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;
import org.junit.jupiter.api.Test;

/** A strut on the surface of the bone, as a plate of bone opposite the plate. */
class OnlayStrutTest {

  private static final Material GRAFT = Material.isotropic(15_000, 0.3);
  private static final Material RIGID = Material.isotropic(1.5e9, 0.3);
  private static final double WIDTH = 14;
  private static final double THICK = 5;
  private static final double FREE = 40;

  private static OnlayStrut strut(double thick, double azimuth, double reach, Double... wires) {
    return new OnlayStrut(
        GRAFT, new Rectangle(WIDTH, thick), azimuth, -reach, reach, List.of(wires), List.of());
  }

  private static FixedBone plated(Material bone, boolean rigid, double... screws) {
    return new FixedBone(
        new Shaft(bone, Constructs.TUBE, 140, 110, OptionalDouble.empty()),
        new Fracture(4, new Fracture.Filling.Nothing()),
        List.of(new MetalPlate(Constructs.STEEL, Constructs.PLATE, 0.5, 5.2, List.of(), 0)),
        DoubleStream.of(screws)
            .mapToObj(
                at ->
                    new PlateScrew(
                        0, at, Constructs.STEEL, 4.3, 5, 1, 1, 1, new Head.Locked(), rigid, false))
            .toList(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static FixedBone usual() {
    return plated(Constructs.BONE, false, -90, -54, -20, 20, 54, 90);
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }

  private static PlateCut atLine(List<PlateCut> cuts) {
    return cuts.stream().filter(cut -> cut.z() == 0).findFirst().orElseThrow();
  }

  /**
   * One rigid screw on each side: plate and strut bend alike, and stretch against each other as far
   * as they lie apart; the strut gives as well where its wall holds the screws.
   */
  @Test
  void and_the_plate_bend_as_two_beams_between_rigid_bones() {
    double wall = 2 * GRAFT.young() * THICK;
    double rocking = wall * THICK * THICK / 12;
    Rectangle section = new Rectangle(WIDTH, THICK);
    double strutBends = 1 / (FREE / (GRAFT.young() * section.weak()) + 2 / rocking);
    double plateBends = Constructs.STEEL.young() * Constructs.PLATE.weak() / FREE;
    double give =
        FREE / (Constructs.STEEL.young() * Constructs.PLATE.area())
            + FREE / (GRAFT.young() * section.area())
            + 2 / wall;
    double apart = 12 + 0.5 + 2.1 + 12 + THICK / 2;
    double turn = 2500 / (plateBends + strutBends + apart * apart / give);
    FixedBone bone = plated(RIGID, true, -20, 20).with(Beside.of(strut(THICK, 180, 60)));
    assertThat(answer(bone, Load.bendingY(2500)).end().ry()).isCloseTo(turn, within(0.01 * turn));
  }

  @Test
  void carries_with_the_plate_just_the_load_over_an_open_gap() {
    FixedBone bone = usual().with(Beside.of(strut(THICK, 180, 60, -40.0, 40.0)));
    Load load = new Load(-300, 0, 0, 1500, 2500, -1200);
    LoadAnswer answer = answer(bone, load);
    PlateCut plate = atLine(answer.plates().get(0));
    PlateCut graft = answer.onlay().orElseThrow();
    double toPlate = 12 + 0.5 + 2.1;
    double toStrut = 12 + THICK / 2;
    assertThat(plate.axial() + graft.axial()).isCloseTo(-300, within(0.01));
    // The strut faces the other way: what bends it away from the bone bends the plate towards it.
    assertThat(plate.weak() - toPlate * plate.axial() - graft.weak() + toStrut * graft.axial())
        .isCloseTo(2500, within(0.5));
    assertThat(plate.strong() - graft.strong()).isCloseTo(1500, within(0.5));
  }

  @Test
  void that_nothing_holds_beyond_the_line_carries_nothing() {
    assertThat(answer(usual().with(Beside.of(strut(THICK, 90, 60))), Load.axial(-10)).onlay())
        .isEmpty();
    OnlayStrut proximal =
        new OnlayStrut(GRAFT, new Rectangle(WIDTH, THICK), 180, -100, 10, List.of(), List.of());
    assertThat(answer(usual().with(Beside.of(proximal)), Load.axial(-10)).onlay()).isEmpty();
  }

  @Test
  void is_not_held_by_screws_that_are_too_short_for_it() {
    OnlayStrut short54 =
        new OnlayStrut(
            GRAFT, new Rectangle(WIDTH, THICK), 180, -60, 60, List.of(), List.of(-54.0, -20.0));
    assertThat(answer(usual().with(Beside.of(short54)), Load.axial(-10)).onlay()).isEmpty();
  }

  @Test
  void at_the_side_is_held_by_its_wires() {
    LoadAnswer answer =
        answer(
            usual().with(Beside.of(strut(THICK, 90, 60, -50.0, -25.0, 25.0, 50.0))),
            Load.axial(-300));
    assertThat(answer.onlay().orElseThrow().axial()).isNegative();
  }

  @Property(tries = 25)
  void makes_a_construct_stiffer_the_thicker_it_is(
      @ForAll @DoubleRange(min = 2, max = 6) double thick,
      @ForAll @DoubleRange(min = 0.2, max = 2) double more,
      @ForAll @DoubleRange(min = 136, max = 224) double azimuth) {
    Stiffness bare = new MechanicalModel(usual()).stiffness().orElseThrow();
    Stiffness thin = with(strut(thick, azimuth, 60, -40.0, 40.0));
    Stiffness thicker = with(strut(thick + more, azimuth, 60, -40.0, 40.0));
    stiffer(thin, bare);
    stiffer(thicker, thin);
  }

  private static Stiffness with(OnlayStrut strut) {
    return new MechanicalModel(usual().with(Beside.of(strut))).stiffness().orElseThrow();
  }

  private static void stiffer(Stiffness one, Stiffness other) {
    double rounding = 1 - 1e-9;
    assertThat(one.axial()).isGreaterThanOrEqualTo(other.axial() * rounding);
    assertThat(one.bendingWeakPlus()).isGreaterThanOrEqualTo(other.bendingWeakPlus() * rounding);
    assertThat(one.bendingStrong()).isGreaterThanOrEqualTo(other.bendingStrong() * rounding);
    assertThat(one.torsion()).isGreaterThanOrEqualTo(other.torsion() * rounding);
  }
}
