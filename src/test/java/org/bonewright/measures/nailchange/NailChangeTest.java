package org.bonewright.measures.nailchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A nail of 10 mm in a canal reamed to 11, put in on day 2 across a transverse line at 180 of 360
 * mm; bolts 1 and 2 near, 3 and 4 far. It failed; the plan does something with it.
 */
class NailChangeTest {

  private static final String PLATE = "{id: 'plate-1', kind: 'plate', holes: 8}";
  private static final String NAIL =
      "{id: 'nail-1', kind: 'nail', outerMm: 12, lengthMm: 330, reamedMm: 13, locking: 'static'}";

  private static CaseText failed() {
    return CaseText.nailed()
        .at(
            "/operations/0",
            "{reduction: {gapNearMm: 1, gapFarMm: 2, contactPercent: 90}, "
                + "compression: {method: 'none'}}")
        .at("/operations/0/fixation/0", "{lengthMm: 320}")
        .redone("bolt-broken")
        .with(
            "{findings: [{day: 114, diagnosis: 'nonunion', vitality: 'oligotrophic',"
                + " defectMm: 0, films: [{view: 'ap', callus: 'little'}]}]}");
  }

  private static CaseText plan(String stage) {
    return failed()
        .without("/plans/0/stages/0/reduction")
        .without("/plans/0/stages/0/compression")
        .at("/plans/0/stages/0", stage);
  }

  private static CaseText exchange() {
    return failed().at("/plans/0/stages/0", "{fixation: [" + NAIL + "]}");
  }

  private static CaseText boltsOut(String bolts) {
    return plan(
        "{fixation: [], biology: [], removed: [{of: 'op-1/nail-1', bolts: " + bolts + "}]}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fixation: [NAIL]                                   | exchanged fact
          fixation: [NAIL, PLATE]                            | plate-over fact
          fixation: [PLATE], removed: []                     | plate-over fact
          fixation: [PLATE]                                  | taken-out fact
          fixation: [], removed: [{of: 'op-1/nail-1'}]       | taken-out fact
          fixation: [], removed: []                          | kept fact
          """)
  void says_what_becomes_of_the_nail(String stage, String reads) {
    String filled = stage.replace("NAIL", NAIL).replace("PLATE", PLATE);
    assertThat(Taken.of("nail-revision", plan("{" + filled + "}"))).isEqualTo(reads);
  }

  @Test
  void there_is_no_nail_to_revise_after_a_plate_at_a_first_operation_or_once_united() {
    assertThat(Taken.of("nail-revision", CaseText.nailed())).isEqualTo("no-nail fact");
    assertThat(Taken.of("nail-revision", CaseText.plated().redone("plate-bent")))
        .isEqualTo("no-nail fact");
    CaseText united =
        exchange()
            .at("/operations/0", "{outcome: {result: 'united', mode: null}}")
            .with("{findings: [{day: 114, diagnosis: 'united'}]}");
    assertThat(Taken.of("nail-revision", united)).isEqualTo("no-nail fact");
  }

  @Test
  void an_old_operation_that_does_not_tell_its_metal_leaves_it_open() {
    assertThat(Taken.of("nail-revision", exchange().without("/operations/0/fixation")))
        .isEqualTo("exchanged or no-nail fact, ask op-1/fixation");
  }

  @Test
  void the_new_nail_is_compared_with_the_old_one() {
    assertThat(Taken.of("nail-diameter-gain", exchange())).isEqualTo("2 fact");
    assertThat(Taken.of("nail-length-gain", exchange())).isEqualTo("10 fact");
    assertThat(Taken.of("nail-fill-before", exchange())).isEqualTo("0.909 fact");
    assertThat(Taken.of("nail-diameter-gain", boltsOut("[3, 4]")))
        .isEqualTo("none: no nail exchanged");
  }

  @Test
  void an_old_nail_of_unknown_size_is_asked_about_where_it_was_put_in() {
    assertThat(
            Taken.of("nail-diameter-gain", exchange().without("/operations/0/fixation/0/outerMm")))
        .isEqualTo("unknown, ask op-1/fixation/nail-1/outerMm");
  }

  @Test
  void a_broken_nail_is_known_by_the_failure() {
    assertThat(Taken.of("nail-broke-before", exchange())).isEqualTo("no fact");
    assertThat(
            Taken.of(
                "nail-broke-before",
                exchange().at("/operations/0/outcome", "{mode: 'nail-broken-mid-shaft'}")))
        .isEqualTo("yes fact");
    assertThat(
            Taken.of(
                "nail-broke-before",
                exchange().at("/operations/0/outcome", "{mode: 'nail-broken'}")))
        .isEqualTo("yes fact");
    assertThat(Taken.of("nail-broke-before", exchange().without("/operations/0/outcome/mode")))
        .isEqualTo("unknown, ask op-1/outcome/mode");
  }

  @Test
  void an_exchange_that_failed_is_known_at_the_next() {
    CaseText twice =
        exchange()
            .with(
                "{operations: ["
                    + exchange().tree().at("/operations/0")
                    + ", {id: 'op-2', day: 115, fixation: ["
                    + NAIL
                    + "], outcome: {result: 'failed', day: 300, mode: 'bolt-broken'}}]}");
    assertThat(Taken.of("exchange-failed-before", twice)).isEqualTo("yes fact");
    assertThat(Taken.of("exchange-failed-before", exchange())).isEqualTo("no fact");
  }

  @Test
  void conditions_for_an_exchange_are_counted() {
    // 10 / 11 = 0.91: the old nail filled the canal
    assertThat(Taken.of("exchange-conditions-missed", exchange())).isEqualTo("1 fact");
    CaseText thin = exchange().at("/operations/0/fixation/0", "{outerMm: 9}");
    assertThat(Taken.of("exchange-conditions-missed", thin)).isEqualTo("0 fact");
    assertThat(
            Taken.of(
                "exchange-conditions-missed", thin.at("/bone", "{name: 'ulna', lengthMm: 260}")))
        .isEqualTo("2 fact");
    assertThat(
            Taken.of(
                "exchange-conditions-missed",
                thin.at("/plans/0/stages/0/reduction", "{gapFarMm: 6}")))
        .isEqualTo("1 fact");
    assertThat(Taken.of("exchange-conditions-missed", boltsOut("[3, 4]")))
        .isEqualTo("none: no nail exchanged");
  }

  @Test
  void an_atrophic_line_may_be_nailed_again_with_graft() {
    CaseText atrophic =
        exchange()
            .at("/operations/0/fixation/0", "{outerMm: 9}")
            .at("/findings/0", "{vitality: 'atrophic'}")
            .at("/plans/0/stages/0", "{biology: []}");
    assertThat(Taken.of("exchange-conditions-missed", atrophic)).isEqualTo("1 fact");
    assertThat(
            Taken.of(
                "exchange-conditions-missed",
                atrophic.at("/plans/0/stages/0", "{biology: [{kind: 'autograft-cancellous'}]}")))
        .isEqualTo("0 fact");
  }

  @Test
  void what_is_not_told_may_be_missed() {
    CaseText thin = exchange().at("/operations/0/fixation/0", "{outerMm: 9}");
    assertThat(Taken.of("exchange-conditions-missed", thin.without("/findings/0/defectMm")))
        .isEqualTo("0–1 fact, ask findings/defectMm and findings/circumferenceMissingPercent");
  }

  @Test
  void steps_beside_an_exchange_nail_are_counted() {
    CaseText all =
        exchange()
            .at(
                "/plans/0/stages/0",
                "{approach: 'anterolateral', compression: {method: 'nail-backslap'},"
                    + " biology: [{kind: 'autograft-cancellous'}]}")
            .at(
                "/plans/0/stages/0",
                "{fixation: [{id: 'nail-1', kind: 'nail', outerMm: 12, locking: 'static', bolts: ["
                    + "{end: 'near', plane: 'lateral'}, {end: 'near', plane: 'anterior'},"
                    + "{end: 'far', plane: 'lateral'}, {end: 'far', plane: 'lateral'}]}]}");
    assertThat(Taken.of("exchange-aids-missed", all)).isEqualTo("0 fact");
    assertThat(
            Taken.of(
                "exchange-aids-missed",
                all.at(
                    "/plans/0/stages/0",
                    "{approach: 'closed', compression: {method: 'none'}, biology: []}")))
        .isEqualTo("3 fact");
    assertThat(
            Taken.of(
                "exchange-aids-missed",
                all.at("/plans/0/stages/0/fixation/0", "{}")
                    .without("/plans/0/stages/0/fixation/0/bolts/0/plane")
                    .without("/plans/0/stages/0/fixation/0/bolts/1/plane")))
        .isEqualTo("0–1 fact, ask plan-a/stage-1/fixation/nail-1/bolts/plane");
  }

  @Test
  void a_nail_locked_otherwise_and_bolts_of_one_plane_are_steps_left_out() {
    String bolts =
        "bolts: [{end: 'near', plane: 'lateral'}, {end: 'near', plane: 'lateral'}, {end: 'far',"
            + " plane: 'lateral'}, {end: 'far', plane: 'lateral'}]}]}";
    CaseText text =
        exchange()
            .at(
                "/plans/0/stages/0",
                "{approach: 'anterolateral', compression: {method: 'nail-backslap'},"
                    + " biology: [{kind: 'autograft-cancellous'}]}")
            .at(
                "/plans/0/stages/0",
                "{fixation: [{id: 'nail-1', kind: 'nail', outerMm: 12, locking: 'static', "
                    + bolts);
    assertThat(Taken.of("exchange-aids-missed", text)).isEqualTo("1 fact");
    assertThat(
            Taken.of(
                "exchange-aids-missed",
                text.at(
                    "/plans/0/stages/0",
                    "{fixation: [{id: 'nail-1', kind: 'nail', outerMm: 12, locking: 'dynamic', "
                        + bolts)))
        .isEqualTo("2 fact");
    // a plan that does not name pressing leaves it out; an operation of the past may have done it
    CaseText silent = text.at("/plans/0/stages/0", "{compression: null}");
    assertThat(Taken.of("exchange-aids-missed", silent)).isEqualTo("2 fact");
  }

  @Test
  void an_exchange_of_the_past_that_does_not_tell_of_pressing_may_have_pressed() {
    CaseText twice =
        exchange()
            .with(
                "{operations: ["
                    + exchange().tree().at("/operations/0")
                    + ", {id: 'op-2', day: 115, approach: 'anterolateral', biology: [{kind:"
                    + " 'autograft-cancellous'}], fixation: [{id: 'nail-2', kind: 'nail', outerMm:"
                    + " 12, locking: 'static', bolts: [{end: 'near', plane: 'lateral'}, {end:"
                    + " 'near', plane: 'anterior'}, {end: 'far', plane: 'lateral'}, {end: 'far',"
                    + " plane: 'lateral'}]}]}]}");
    assertThat(Taken.of("exchange-aids-missed", twice, "op-2"))
        .isEqualTo("0–1 fact, ask op-2/compression/method");
  }

  @Test
  void a_new_nail_of_unknown_size_is_asked_about_in_the_plan() {
    CaseText text = exchange().without("/plans/0/stages/0/fixation/0/outerMm");
    assertThat(Taken.of("nail-diameter-gain", text))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/nail-1/outerMm");
    assertThat(Taken.of("nail-diameter-gain", text.without("/operations/0/fixation/0/outerMm")))
        .isEqualTo(
            "unknown, ask op-1/fixation/nail-1/outerMm and"
                + " plan-a/stage-1/fixation/nail-1/outerMm");
  }

  @Test
  void conditions_for_an_exchange_that_are_missed_are_named() {
    CaseText atrophic =
        exchange()
            .at("/operations/0/fixation/0", "{outerMm: 9}")
            .at("/findings/0", "{vitality: 'atrophic'}")
            .at("/plans/0/stages/0", "{biology: []}");
    assertThat(
            Taken.reading("exchange-conditions-missed", Taken.subject(atrophic.file(), "plan-a"))
                .working())
        .isEqualTo("atrophic without graft");
  }

  @Test
  void taking_bolts_out_is_judged_by_its_conditions() {
    // (114 - 2) / 7 = 16 weeks; the line at 180 of 360 mm leaves the far fragment as long
    assertThat(Taken.of("weeks-nailing-to-dynamisation", boltsOut("[3, 4]"))).isEqualTo("16 fact");
    assertThat(Taken.of("dynamisation-conditions-missed", boltsOut("[3, 4]"))).isEqualTo("0 fact");
    assertThat(Taken.of("dynamisation-conditions-missed", boltsOut("[1]"))).isEqualTo("1 fact");
    assertThat(
            Taken.of(
                "dynamisation-conditions-missed",
                boltsOut("[3]").at("/injury", "{pattern: 'spiral'}")))
        .isEqualTo("1 fact");
    assertThat(
            Taken.of(
                "dynamisation-conditions-missed",
                boltsOut("[3]").with("{findings: [{day: 30, diagnosis: 'healing'}]}")))
        .isEqualTo("1–2 fact, ask findings/films/callus");
  }

  @Test
  void a_nail_is_dynamised_by_bolts_out_of_it_across_an_open_line_only() {
    assertThat(Taken.of("nail-dynamised", boltsOut("[3, 4]"))).isEqualTo("yes fact");
    assertThat(Taken.of("nail-dynamised", exchange())).isEqualTo("no fact");
    assertThat(
            Taken.of(
                "nail-dynamised",
                boltsOut("[3]").with("{findings: [{day: 114, diagnosis: 'united'}]}")))
        .isEqualTo("no fact");
    assertThat(
            Taken.of(
                "nail-dynamised",
                boltsOut("[3]").at("/plans/0/stages/0", "{fixation: [" + PLATE + "]}")))
        .isEqualTo("no fact");
  }

  @Test
  void callus_that_bridges_holds_a_spiral_and_its_length() {
    CaseText held =
        boltsOut("[3]")
            .at("/injury", "{pattern: 'spiral'}")
            .with(
                "{findings: [{day: 114, diagnosis: 'delayed-union',"
                    + " films: [{view: 'ap', callus: 'bridging'}]}]}");
    assertThat(Taken.of("dynamisation-conditions-missed", held)).isEqualTo("0 fact");
    assertThat(Taken.of("room-to-shorten", held)).isEqualTo("none: callus holds the length");
  }

  @Test
  void without_callus_load_can_close_the_gap_or_the_broken_up_zone() {
    assertThat(Taken.of("room-to-shorten", boltsOut("[3]"))).isEqualTo("2 fact");
    CaseText brokenUp =
        boltsOut("[3]")
            .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 165, toMm: 195}}");
    assertThat(Taken.of("room-to-shorten", brokenUp)).isEqualTo("30 fact");
  }

  @Test
  void bolts_that_come_out_of_a_healed_bone_or_beside_a_new_plate_make_nothing_dynamic() {
    assertThat(
            Taken.of(
                "dynamisation-conditions-missed",
                boltsOut("[3]").with("{findings: [{day: 114, diagnosis: 'united'}]}")))
        .isEqualTo("none: the bone had united");
    CaseText plated = boltsOut("[3]").at("/plans/0/stages/0", "{fixation: [" + PLATE + "]}");
    assertThat(Taken.of("dynamisation-conditions-missed", plated))
        .isEqualTo("none: no bolt taken out of a nail that stays");
  }

  @Test
  void stability_is_added_by_a_thicker_nail_and_not_by_bolts_or_graft() {
    assertThat(Taken.of("stability-added", exchange())).isEqualTo("more fact");
    assertThat(Taken.of("stability-added", boltsOut("[3]"))).isEqualTo("dynamised fact");
    assertThat(
            Taken.of(
                "stability-added",
                plan("{fixation: [], removed: [], biology: [{kind: 'autograft-cancellous'}]}")))
        .isEqualTo("nothing fact");
    assertThat(Taken.of("stability-added", plan("{fixation: [" + PLATE + "], removed: []}")))
        .isEqualTo("more fact");
    assertThat(Taken.of("stability-added", CaseText.nailed())).isEqualTo("more fact");
  }

  @Test
  void whether_a_nail_of_unknown_size_adds_stability_is_open() {
    assertThat(Taken.of("stability-added", exchange().without("/operations/0/fixation/0/outerMm")))
        .isEqualTo("more or nothing fact, ask plan-a/stage-1/fixation");
  }
}
