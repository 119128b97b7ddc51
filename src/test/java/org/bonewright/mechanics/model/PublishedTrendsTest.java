package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.junit.jupiter.api.Test;

/**
 * What is known of plated bones from bench and clinic: longer free plates are softer, the side of
 * the plate decides whether the bone helps, and a narrow gap is strained more by the same movement.
 */
class PublishedTrendsTest {

  private static final Head LOCKED = new Head.Locked();
  private static final Filling OPEN = new Filling.Nothing();
  private static final double[] NEAR = {-90, -54, -18, 18, 54, 90};
  private static final double[] FAR = {-90, -72, 72, 90};

  @Test
  void a_longer_free_plate_moves_more_under_every_load() {
    for (Load load : new Load[] {Load.axial(-200), Load.bendingY(2500), Load.bendingY(-2500)}) {
      LoadAnswer near = answer(Constructs.plated(4, OPEN, LOCKED, NEAR), load);
      LoadAnswer far = answer(Constructs.plated(4, OPEN, LOCKED, FAR), load);
      assertThat(Math.abs(far.gap().far())).isGreaterThan(2 * Math.abs(near.gap().far()));
      assertThat(Math.abs(far.gap().near())).isGreaterThan(2 * Math.abs(near.gap().near()));
    }
    LoadAnswer near = answer(Constructs.plated(4, OPEN, LOCKED, NEAR), Load.torque(1500));
    LoadAnswer far = answer(Constructs.plated(4, OPEN, LOCKED, FAR), Load.torque(1500));
    assertThat(far.gap().shear()).isGreaterThan(2 * near.gap().shear());
  }

  @Test
  void over_an_open_gap_stress_in_the_plate_does_not_depend_on_its_free_length() {
    Load load = new Load(-200, 0, 0, 700, 2500, 900);
    PlateCut near = atFracture(answer(Constructs.plated(4, OPEN, LOCKED, NEAR), load));
    PlateCut far = atFracture(answer(Constructs.plated(4, OPEN, LOCKED, FAR), load));
    assertThat(far.nominal()).isCloseTo(near.nominal(), within(1e-4));
  }

  @Test
  void on_the_side_under_tension_over_closed_ends_the_plate_carries_several_times_less() {
    Filling touching = new Filling.Touching(0);
    Load tension = Load.bendingY(-5000);
    FixedBone open = Constructs.plated(4, OPEN, LOCKED, NEAR);
    FixedBone closed = Constructs.plated(0, touching, LOCKED, NEAR);
    FixedBone pressed = Constructs.pressed(closed, 800, 3.8);
    assertThat(bending(closed, tension)).isLessThan(bending(open, tension) / 4);
    assertThat(bending(pressed, tension)).isLessThan(bending(open, tension) / 4);
  }

  /** Return by how much the bending of the plate at the fracture changes under a load. */
  private static double bending(FixedBone bone, Load load) {
    double before = atFracture(answer(bone, Load.axial(0))).weak();
    return Math.abs(atFracture(answer(bone, load)).weak() - before);
  }

  @Test
  void on_the_side_under_pressure_without_compression_the_plate_bends_alone() {
    LoadAnswer answer =
        answer(Constructs.plated(0, new Filling.Touching(0), LOCKED, NEAR), Load.bendingY(5000));
    assertThat(answer.gap().far()).isPositive();
    assertThat(atFracture(answer).weak()).isCloseTo(5000, within(50.0));
  }

  @Test
  void a_narrow_gap_is_strained_more_by_the_same_movement() {
    LoadAnswer wide = answer(Constructs.plated(4, OPEN, LOCKED, FAR), Load.axial(-100));
    LoadAnswer narrow = answer(Constructs.plated(1, OPEN, LOCKED, FAR), Load.axial(-100));
    assertThat(narrow.gap().far())
        .isCloseTo(wide.gap().far(), within(0.05 * Math.abs(wide.gap().far())));
    double four = 4 * wide.gap().farStrain().orElseThrow();
    assertThat(narrow.gap().farStrain().orElseThrow())
        .isCloseTo(four, within(0.05 * Math.abs(four)));
  }

  private static PlateCut atFracture(LoadAnswer answer) {
    return answer.plates().get(0).stream().filter(cut -> cut.z() == 0).findFirst().orElseThrow();
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }
}
