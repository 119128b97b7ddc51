package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.GivingWay;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;

/** A nail in a bone that hardly gives, held to beams that can be worked out by hand. */
class NailInCanalTest {

  private static final Material STEEL = Material.isotropic(193_000, 0.3);
  private static final Material ALL_BUT_RIGID = Material.isotropic(1e7, 0.3);
  private static final HollowCircle NAIL = new HollowCircle(10, 4);
  private static final double BOLT = 100;
  private static final double GAP = 4;

  private static MetalNail.Bolt firm(double at) {
    return new MetalNail.Bolt(at, 0, STEEL, 5, true, true, false);
  }

  private static MetalNail.Bolt usual(double at) {
    return new MetalNail.Bolt(at, 0, STEEL, 5, false, false, false);
  }

  private static FixedBone fixed(
      Fracture.Filling filling, List<MetalNail.Bolt> bolts, List<MetalNail.Rest> rests) {
    return new FixedBone(
        new Shaft(ALL_BUT_RIGID, new HollowCircle(28, 14), 150, 150, OptionalDouble.empty()),
        new Fracture(filling instanceof Fracture.Filling.Nothing ? GAP : 0, filling),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.of(new MetalNail(STEEL, NAIL, bolts, rests)),
        Optional.empty());
  }

  private static LoadAnswer answer(FixedBone bone, Load load) {
    assertThat(new MechanicalModel(bone).under(load)).isInstanceOf(Outcome.Answered.class);
    return ((Outcome.Answered) new MechanicalModel(bone).under(load)).answer();
  }

  private static TubeCut cut(LoadAnswer answer, double level) {
    return answer.nail().orElseThrow().cuts().stream()
        .filter(cut -> cut.z() == level)
        .findFirst()
        .orElseThrow();
  }

  private static FixedBone resting(double at, double slack) {
    return fixed(
        new Fracture.Filling.Nothing(),
        List.of(firm(-BOLT), firm(BOLT)),
        List.of(new MetalNail.Rest(at, slack)));
  }

  @Test
  void overAnOpenGapANailCarriesTheWholeLoadWhateverElseHoldsIt() {
    FixedBone bone =
        fixed(
            new Fracture.Filling.Nothing(),
            List.of(firm(-BOLT), firm(-60), firm(60), firm(BOLT)),
            List.of(new MetalNail.Rest(20, 0)));

    LoadAnswer answer = answer(bone, new Load(-500, 0, 0, 3000, 4000, 2000));

    TubeCut atLine = cut(answer, 0);
    assertThat(atLine.axial()).isCloseTo(-500, within(0.01));
    assertThat(atLine.bendingX()).isCloseTo(3000, within(0.01));
    assertThat(atLine.bendingY()).isCloseTo(4000, within(0.01));
    assertThat(atLine.torque()).isCloseTo(2000, within(0.01));
    assertThat(atLine.bending()).isCloseTo(5000, within(0.01));
  }

  @Test
  void aNailTouchesItsCanalAtTheLoadThatBendsItAsFarAsTheSlack() {
    double at = 20;
    double slack = 0.05;
    double moment = 10_000;
    double arm = BOLT - at;
    double touching = 2 * STEEL.young() * NAIL.weak() * slack / (arm * arm);

    List<GivingWay> events = answer(resting(at, slack), Load.bendingY(moment)).events();

    assertThat(events).hasSize(1);
    assertThat(events.get(0).what()).isEqualTo("touches");
    assertThat(events.get(0).at()).isEqualTo(at);
    assertThat(events.get(0).load()).isCloseTo(touching / moment, within(0.01 * touching / moment));
  }

  @Test
  void theWallThenTakesOverWhatAPropUnderACantileverDoes() {
    double at = 20;
    double slack = 0.05;
    double moment = 10_000;
    double arm = BOLT - at;
    double bends = STEEL.young() * NAIL.weak();
    double shears = NAIL.shearShare(0.3) * STEEL.shear() * NAIL.area();
    double prop =
        (moment * arm * arm / 2 / bends - slack) / (arm * arm * arm / 3 / bends + arm / shears);

    LoadAnswer answer = answer(resting(at, slack), Load.bendingY(moment));

    double atBolt = moment - prop * arm;
    assertThat(cut(answer, -BOLT).bendingY()).isCloseTo(moment, within(0.001 * moment));
    double largest = Math.max(Math.abs(atBolt), 0);
    assertThat(Math.abs(cut(answer, BOLT).bendingY())).isCloseTo(largest, within(0.01 * moment));
    assertThat(cut(answer, at).bendingY()).isCloseTo(moment, within(0.01 * moment));
  }

  @Test
  void aNailThatDoesNotReachTheWallIsAsOneInAWideCanal() {
    FixedBone wide =
        fixed(new Fracture.Filling.Nothing(), List.of(firm(-BOLT), firm(BOLT)), List.of());
    Load load = Load.bendingY(1000);

    LoadAnswer free = answer(wide, load);
    LoadAnswer slack = answer(resting(20, 1), load);

    assertThat(slack.events()).isEmpty();
    assertThat(slack.end().ry()).isCloseTo(free.end().ry(), within(1e-6 * free.end().ry()));
  }

  @Test
  void aFragmentOnOneBoltSwingsUntilTheCanalStopsIt() {
    double slack = 0.5;
    double at = 10;
    FixedBone hung =
        fixed(
            new Fracture.Filling.Nothing(),
            List.of(firm(-BOLT), firm(-60), usual(BOLT)),
            List.of(new MetalNail.Rest(at, slack)));

    LoadAnswer answer = answer(hung, Load.bendingX(500));

    double swing = slack / (BOLT - at);
    assertThat(Math.abs(answer.end().rx())).isBetween(swing, 1.2 * swing);
    assertThat(answer.events()).extracting(GivingWay::what).containsExactly("touches");
  }

  @Test
  void aBoltInASlotLeavesTheForceAlongTheBoneToTheEndsThatTouch() {
    MetalNail.Bolt sliding = new MetalNail.Bolt(BOLT, 0, STEEL, 5, true, true, true);
    Fracture.Filling ends = new Fracture.Filling.Touching(0.3);

    LoadAnswer slides =
        answer(fixed(ends, List.of(firm(-BOLT), sliding), List.of()), Load.axial(-1000));
    LoadAnswer held =
        answer(fixed(ends, List.of(firm(-BOLT), firm(BOLT)), List.of()), Load.axial(-1000));

    assertThat(cut(slides, 0).axial()).isCloseTo(0, within(2.0));
    assertThat(cut(held, 0).axial()).isLessThan(cut(slides, 0).axial());
  }

  @Test
  void aBoltIsBentByHalfOfTheForceOverTheWayFromTheNailToTheWall() {
    // Each half carries half of the force; both ends of it can hardly turn, so that the moment at
    // the nail lies between half of force times length, for two ends held, and all of it.
    FixedBone bone =
        fixed(new Fracture.Filling.Nothing(), List.of(firm(-BOLT), usual(BOLT)), List.of());
    double free = new HollowCircle(28, 14).middleRadius() - NAIL.outer() / 2;

    LoadAnswer answer = answer(bone, Load.axial(-1000));

    var bolt = answer.nail().orElseThrow().bolts().get(1);
    assertThat(bolt.shear()).isCloseTo(500, within(0.5));
    assertThat(bolt.moment()).isBetween(500 * free / 2 * 0.999, 500 * free);
    assertThat(bolt.bendingStress())
        .isCloseTo(32 * bolt.moment() / (Math.PI * 125), within(0.02 * bolt.bendingStress()));
  }
}
