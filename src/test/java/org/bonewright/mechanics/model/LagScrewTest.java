package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.bonewright.mechanics.answer.GivingWay;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.construct.Beside;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.LaggedScrew.Place;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.hold.PullOut;
import org.bonewright.mechanics.section.HollowCircle;
import org.junit.jupiter.api.Test;

/**
 * A lag screw: the joint of a bolt and what it clamps (textbooks of machine design, from memory).
 */
class LagScrewTest {

  private static final double HALF = 12;
  private static final double FORCE = 1500;
  private static final double CORE = 2.4;
  private static final double MAJOR = 3.5;
  private static final double HEAD = 4;
  private static final HollowCircle TUBE = Constructs.TUBE;
  private static final double YOUNG = Constructs.BONE.young();

  private static LaggedScrew screw(double force, Place head, Place thread) {
    return new LaggedScrew(0, head, thread, Constructs.STEEL, CORE, MAJOR, 1.25, force, HEAD);
  }

  /** Along the axis of the bone, at some distance from it. */
  private static LaggedScrew straight(double force, double out) {
    return screw(force, new Place(-HALF, out), new Place(HALF, out));
  }

  private static FixedBone alone(double gap, LaggedScrew... screws) {
    return new FixedBone(
            new Shaft(Constructs.BONE, TUBE, 140, 110, OptionalDouble.of(52)),
            new Fracture(gap, new Filling.Touching(0.3)),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty())
        .with(Beside.of(List.of(screws)));
  }

  private static FixedBone plated(LaggedScrew... screws) {
    return Constructs.plated(
            0, new Filling.Touching(0.3), new Head.Locked(), -90, -54, -18, 18, 54, 90)
        .with(Beside.of(List.of(screws)));
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    Outcome outcome = new MechanicalModel(bone).under(load);
    assertThat(outcome).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) outcome).answer();
  }

  private static LagDemand lag(FixedBone bone, double pull) {
    return answer(bone, Load.axial(pull)).lags().get(0);
  }

  /** Head, shank and thread one after another. */
  private static double screwStiffness() {
    double head = 2 * YOUNG / (1 - 0.3 * 0.3) * HEAD;
    double shank = 193_000 * Math.PI * CORE * CORE / 4 / (2 * HALF);
    double thread =
        2 * Math.PI * Constructs.BONE.shear() * TUBE.wall() / Math.log(2 * TUBE.outer() / MAJOR);
    return 1 / (1 / head + 1 / shank + 1 / thread);
  }

  /** The bone between head and thread, and the layer on which the ends rest. */
  private static double boneStiffness() {
    return YOUNG * TUBE.area() / (2 * HALF + BoneEnds.LAYER);
  }

  private static Offset<Double> percent(double of, double percent) {
    return within(Math.abs(of) * percent / 100);
  }

  @Test
  void pulls_as_hard_as_it_was_tightened_before_any_load() {
    LoadAnswer answer = answer(alone(0, straight(FORCE, 0)), Load.axial(0));
    assertThat(answer.lags().get(0).tension()).isCloseTo(FORCE, percent(FORCE, 0.01));
    assertThat(answer.contact().orElseThrow().force()).isCloseTo(FORCE, percent(FORCE, 0.01));
  }

  @Test
  void takes_of_a_pull_only_its_share_of_the_stiffness_until_the_ends_part() {
    FixedBone bone = alone(0, straight(FORCE, 0));
    double share = screwStiffness() / (screwStiffness() + boneStiffness());
    assertThat(lag(bone, 1000).tension()).isCloseTo(FORCE + 1000 * share, percent(FORCE, 0.1));
    assertThat(lag(bone, -1000).tension()).isCloseTo(FORCE - 1000 * share, percent(FORCE, 0.1));
    double parts = FORCE / (1 - share);
    assertThat(answer(bone, Load.axial(0.999 * parts)).contact().orElseThrow().closed()).isOne();
    assertThat(answer(bone, Load.axial(1.001 * parts)).contact().orElseThrow().closed()).isZero();
    assertThat(lag(bone, 1.2 * parts).tension()).isCloseTo(1.2 * parts, percent(parts, 0.01));
  }

  @Test
  void is_the_only_spring_once_the_ends_have_parted() {
    FixedBone bone = alone(0, straight(FORCE, 0));
    double more =
        answer(bone, Load.axial(2500)).gap().near() - answer(bone, Load.axial(2200)).gap().near();
    assertThat(more).isCloseTo(300 / screwStiffness(), percent(more, 0.1));
  }

  @Test
  void comes_loose_where_the_ends_are_pressed_together_further_than_it_stretched() {
    FixedBone bone = alone(0, straight(FORCE, 0));
    double share = screwStiffness() / (screwStiffness() + boneStiffness());
    double loosens = FORCE / share;
    assertThat(answer(bone, Load.axial(-0.99 * loosens)).events()).isEmpty();
    LoadAnswer beyond = answer(bone, Load.axial(-2 * loosens));
    assertThat(beyond.events()).extracting(GivingWay::what).containsExactly("loosens");
    assertThat(beyond.events().get(0).load()).isCloseTo(0.5, within(0.001));
    assertThat(beyond.lags().get(0).loose()).isTrue();
    assertThat(beyond.lags().get(0).tension()).isCloseTo(0, within(1.0));
  }

  @Test
  void in_the_middle_opens_at_its_force_times_the_core_of_the_section() {
    double told = new MechanicalModel(alone(0, straight(FORCE, 0))).openingMoment().orElseThrow();
    double moment = FORCE * TUBE.coreRadius() / 1000;
    assertThat(told).isCloseTo(moment, percent(moment, 1));
  }

  @Test
  void presses_at_its_own_place() {
    double out = 2;
    FixedBone bone = alone(0, straight(FORCE, out));
    // The far cortex, away from the screw, is pressed less and opens sooner.
    double far = FORCE * (TUBE.coreRadius() - out) / 1000;
    double told = new MechanicalModel(bone).openingMoment().orElseThrow();
    assertThat(told).isCloseTo(far, percent(told, 6));
  }

  @Test
  void that_slants_presses_with_a_part_of_its_force_and_shears_with_the_rest() {
    double tilt = Math.toRadians(10);
    Place head = new Place(-HALF * Math.cos(tilt), HALF * Math.sin(tilt));
    Place thread = new Place(HALF * Math.cos(tilt), -HALF * Math.sin(tilt));
    LoadAnswer answer = answer(plated(screw(FORCE, head, thread)), Load.axial(0));
    assertThat(answer.contact().orElseThrow().force())
        .isCloseTo(FORCE * Math.cos(tilt), percent(FORCE, 8));
  }

  @Test
  void over_an_open_gap_only_holds() {
    FixedBone bone = alone(3, straight(0, 0));
    LoadAnswer answer = answer(bone, Load.axial(200));
    assertThat(answer.lags().get(0).tension()).isCloseTo(200, within(1e-3));
    double opens = 200 / screwStiffness();
    assertThat(answer.gap().near()).isCloseTo(opens, percent(opens, 0.1));
  }

  @Test
  void strips_at_what_its_thread_holds_in_one_cortex() {
    double holds = new PullOut(MAJOR, CORE, 1.25).capacity(52, TUBE.wall());
    LagDemand lag = lag(alone(0, straight(FORCE, 0)), 0);
    assertThat(lag.capacity().orElseThrow()).isCloseTo(holds, percent(holds, 0.01));
    assertThat(lag.margin().orElseThrow()).isCloseTo(holds / FORCE, within(0.01));
  }

  @Property(tries = 30)
  void several_pull_each_as_hard_as_it_was_tightened(
      @ForAll @DoubleRange(min = 200, max = 2000) double first,
      @ForAll @DoubleRange(min = 200, max = 2000) double second) {
    LoadAnswer answer = answer(alone(0, straight(first, 1), straight(second, -1)), Load.axial(0));
    assertThat(answer.lags().get(0).tension()).isCloseTo(first, percent(first, 1));
    assertThat(answer.lags().get(1).tension()).isCloseTo(second, percent(second, 1));
  }

  @Property(tries = 30)
  void spares_the_plate_the_harder_it_presses(
      @ForAll @DoubleRange(min = 200, max = 1500) double force,
      @ForAll @DoubleRange(min = 1.1, max = 2) double times) {
    Load bend = Load.bendingY(8000);
    assertThat(answer(plated(straight(times * force, 0)), bend).gap().max())
        .isLessThanOrEqualTo(answer(plated(straight(force, 0)), bend).gap().max() + 1e-9);
  }
}
