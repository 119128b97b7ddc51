package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.measures.force.Sketches.bridged;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** How much stiffer a plan is than what failed: a bridged tibia, redone. */
class StiffnessGainTest {

  private static final String STAGE = "/plans/0/stages/0";

  /** The same plate on another surface, whose screws find bone that was never drilled. */
  private static final CaseText REDONE =
      bridged().redone("plate-bent").at(STAGE + "/fixation/0", "{surface: 'anterior'}");

  private static Reading gain(CaseText text) {
    return Sketches.scene(text).read("stiffness-gain");
  }

  private static List<Double> gains(CaseText text) {
    List<Double> gains = ((Reading.Sampled) gain(text)).samples();
    assertThat(gains).hasSize(Draws.NUMBER);
    return gains;
  }

  @Test
  void the_same_plate_in_fresh_bone_gains_nothing() {
    assertThat(gains(REDONE)).allMatch(gain -> gain == 1);
  }

  @Test
  void graft_alone_gains_nothing() {
    CaseText graft =
        REDONE.at(
            STAGE,
            "{fixation: [], removed: [], reduction: null, compression: null,"
                + " biology: [{kind: 'autograft-cancellous'}]}");
    assertThat(gains(graft)).allMatch(gain -> gain == 1);
  }

  @Test
  void graft_alone_gains_nothing_where_the_ends_had_been_pressed_together() {
    CaseText graft =
        CaseText.plated()
            .redone("plate-bent")
            .at(
                STAGE,
                "{fixation: [], removed: [], reduction: null, compression: null,"
                    + " biology: [{kind: 'autograft-cancellous'}]}");
    assertThat(gains(graft)).allMatch(gain -> gain == 1);
  }

  @Test
  void screws_of_the_same_size_in_the_old_holes_hold_nothing() {
    CaseText again = bridged().redone("plate-bent");
    assertThat(Sketches.of(again).plates().get(0).screws()).isEmpty();
    assertThat(Taken.of("stiffness-gain", again)).isEqualTo("unknown, ask plan-a/stage-1/fixation");
  }

  @Test
  void a_thicker_plate_gains_under_every_set() {
    CaseText thicker = REDONE.at(STAGE + "/fixation/0", "{thicknessMm: 6}");
    assertThat(gains(thicker)).allMatch(gain -> gain > 1.2);
  }

  @Test
  void a_thinner_plate_loses_under_every_set() {
    CaseText thinner = REDONE.at(STAGE + "/fixation/0", "{thicknessMm: 3}");
    assertThat(gains(thinner)).allMatch(gain -> gain < 1);
  }

  @Test
  void ends_pressed_together_gain_on_a_line_that_has_not_united() {
    CaseText pressed =
        REDONE.at(
            STAGE,
            "{reduction: {gapNearMm: 0, gapFarMm: 0, contactPercent: 100},"
                + " compression: {method: 'tension-device', prebent: 'yes'}}");
    assertThat(gains(pressed)).allMatch(gain -> gain > 1);
  }

  @Test
  void a_first_operation_has_none() {
    assertThat(Taken.of("stiffness-gain", bridged())).isEqualTo("none: no operation before it");
  }

  @Test
  void a_ring_fixator_before_or_after_has_none() {
    String why = "none: a ring or hybrid fixator is not modelled";
    String fixator = "{fixation: [{id: 'f', kind: 'external-fixator', frame: 'ring'}]}";
    assertThat(Taken.of("stiffness-gain", REDONE.at(STAGE, fixator))).isEqualTo(why);
    assertThat(Taken.of("stiffness-gain", REDONE.at("/operations/0", fixator))).isEqualTo(why);
  }

  @Test
  void a_thicker_nail_gains_and_the_same_one_does_not() {
    CaseText again =
        CaseText.nailed()
            .at("/operations/0/reduction", "{gapNearMm: 1, gapFarMm: 1, contactPercent: 0}")
            .redone("nail-broken");
    CaseText thicker = again.at(STAGE + "/fixation/0", "{outerMm: 12, reamedMm: 13.5}");
    assertThat(gains(again)).allMatch(gain -> gain == 1);
    assertThat(gains(thicker)).allMatch(gain -> gain > 1.05);
  }

  @Test
  void a_plate_gains_on_a_fixator_before_it() {
    CaseText after =
        REDONE
            .at("/operations/0", "{fixation: [" + Sketches.FIXATOR + "]}")
            .at("/operations/0/outcome", "{mode: 'pins-loose'}");
    assertThat(gains(after)).allMatch(gain -> gain > 1);
  }

  @Test
  void a_gap_that_is_not_told_is_asked() {
    assertThat(Taken.of("stiffness-gain", REDONE.without(STAGE + "/reduction/gapFarMm")))
        .isEqualTo("unknown, ask plan-a/stage-1/reduction/gapFarMm");
  }

  @Test
  void tells_both_in_its_working() {
    assertThat(gain(REDONE).working())
        .matches("bending from [0-9.]+ to [0-9.]+, torsion from [0-9.]+ to [0-9.]+ N·m per degree");
  }
}
