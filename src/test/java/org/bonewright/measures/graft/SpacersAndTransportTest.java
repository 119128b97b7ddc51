package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpacersAndTransportTest {

  private static CaseText plan(String... stages) {
    return CaseText.plated()
        .redone("plate-bent")
        .at("/plans/0", "{stages: [" + String.join(", ", stages) + "]}");
  }

  private static final String FIXATOR =
      "fixation: [{id: 'frame', kind: 'external-fixator'}], removed: [{of: 'op-1/plate-1'}]";
  private static final String SPACER =
      "{id: 'a', biology: [{kind: 'spacer'}], infectionCare: {debridement: 'yes'}, "
          + FIXATOR
          + "}";
  private static final String GRAFT =
      "{id: 'b', daysAfterStageBefore: {min: 40, max: 44}, fixation: [], removed: [],"
          + " biology: [{kind: 'reamer-graft'}]}";

  @Test
  void a_spacer_is_held_by_a_fixator_and_followed_by_graft() {
    CaseText text = plan(SPACER, GRAFT);
    assertThat(Taken.of("spacer-used", text)).isEqualTo("yes fact");
    assertThat(Taken.of("spacer-held", text)).isEqualTo("yes fact");
    assertThat(Taken.of("spacer-grafted", text)).isEqualTo("yes fact");
    assertThat(Taken.of("spacer-days", text))
        .isEqualTo("40–44 fact, ask plan-a/b/daysAfterStageBefore");
  }

  @Test
  void intervals_add_up_over_a_stage_between() {
    // 7 + 35
    CaseText text =
        plan(
            SPACER,
            "{id: 'look', daysAfterStageBefore: 7, fixation: [], removed: []}",
            "{id: 'c', daysAfterStageBefore: 35, fixation: [], removed: [], biology: [{kind:"
                + " 'reamer-graft'}]}");
    assertThat(Taken.of("spacer-days", text)).isEqualTo("42 fact");
  }

  @Test
  void a_spacer_without_metal_is_not_held_and_without_graft_not_followed() {
    CaseText text = plan("{id: 'a', biology: [{kind: 'spacer'}], removed: [{of: 'op-1/plate-1'}]}");
    assertThat(Taken.of("spacer-held", text)).isEqualTo("no fact");
    assertThat(Taken.of("spacer-grafted", text)).isEqualTo("no fact");
    assertThat(Taken.of("spacer-days", text)).isEqualTo("none: no graft follows here");
  }

  @Test
  void a_done_stage_with_a_spacer_belongs_to_the_course_of_what_follows() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at(
                "/operations/0",
                "{biology: [{kind: 'spacer'}], outcome: {result: 'stage-done', day: 9,"
                    + " mode: null}}")
            .at("/plans/0", "{stages: [" + GRAFT + "]}");
    assertThat(Taken.of("spacer-days", text)).startsWith("40–44 fact");
    CaseText failed = text.at("/operations/0/outcome", "{result: 'failed'}");
    assertThat(Taken.of("spacer-used", failed)).isEqualTo("no fact");
  }

  @Test
  void a_spacer_is_not_supposed_where_the_graft_of_a_plain_line_is_not_told() {
    CaseText untold = CaseText.plated().without("/operations/0/biology");
    assertThat(Taken.of("spacer-used", untold)).isEqualTo("no fact");
    assertThat(Taken.of("spacer-held", untold)).isEqualTo("none: no spacer mentioned");
  }

  @Test
  void a_defect_leaves_open_whether_a_spacer_went_in_where_the_graft_is_not_told() {
    CaseText untold = CaseText.plated().without("/operations/0/biology");
    String ask = "unknown, ask op-1/biology";
    assertThat(Taken.of("spacer-used", untold.with("{injury: {pattern: 'segmental-defect'}}")))
        .isEqualTo(ask);
    assertThat(Taken.of("spacer-used", untold.with("{findings: [{day: 1, vitality: 'defect'}]}")))
        .isEqualTo(ask);
  }

  @Test
  void a_spacer_named_before_leaves_open_whether_another_went_in() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/operations/0", "{biology: [{kind: 'spacer'}]}");
    var root = text.tree();
    var again = root.withArray("/operations").get(0).deepCopy().asObject();
    again.put("id", "op-2").put("day", 300).remove("biology");
    again.remove("outcome");
    root.withArray("/operations").add(again);
    root.remove("plans");
    assertThat(Taken.of("spacer-used", CaseText.of(root.toString())))
        .isEqualTo("unknown, ask op-2/biology");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 60 mm ask for 240 days of consolidation
          latencyDays: 7                  | 0 fact
          latencyDays: 4                  | 1 fact
          latencyDays: 11                 | 1 fact
          mmPerDay: 1.5                   | 1 fact
          stepsPerDay: 3                  | 1 fact
          consolidationDays: 239          | 1 fact
          dockingTreated: 'no'            | 1 fact
          dockingTreated: null            | 1 fact
          latencyDays: 4, stepsPerDay: 2  | 2 fact
          stepsPerDay: null               | 0–1 fact, ask plan-a/stage-1/transport/stepsPerDay
          latencyDays: {min: 4, max: 6}   | 0–1 fact, ask plan-a/stage-1/transport/latencyDays
          latencyDays: {min: 4, max: 5}   | 0–1 fact, ask plan-a/stage-1/transport/latencyDays
          latencyDays: {min: 10, max: 11} | 0–1 fact, ask plan-a/stage-1/transport/latencyDays
          latencyDays: 5                  | 0 fact
          latencyDays: 10                 | 0 fact
          consolidationDays: null         | 0–1 fact, ask plan-a/stage-1/transport/consolidationDays
          consolidationDays: {min: 239, max: 240} | 0–1 fact, ask plan-a/stage-1/transport/consolidationDays
          dockingTreated: 'unknown'       | 0–1 fact, ask plan-a/stage-1/transport/dockingTreated
          """)
  void departures_of_a_transport_are_counted(String change, String reads) {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0/stages/0/reduction", "{gapNearMm: 60, gapFarMm: 60}")
            .at(
                "/plans/0/stages/0",
                "{transport: {latencyDays: 7, mmPerDay: 1, stepsPerDay: 4, consolidationDays: 240,"
                    + " dockingTreated: 'yes'}}")
            .at("/plans/0/stages/0/transport", "{" + change + "}");
    assertThat(Taken.of("transport-departures", text)).isEqualTo(reads);
    assertThat(Taken.of("transport-used", text)).isEqualTo("yes fact");
  }

  @Test
  void consolidation_is_counted_from_the_gap_which_may_be_a_range() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0/stages/0/reduction", "{gapNearMm: 60, gapFarMm: {min: 60, max: 70}}")
            .at(
                "/plans/0/stages/0",
                "{transport: {latencyDays: 7, mmPerDay: 1, stepsPerDay: 4, consolidationDays: 260,"
                    + " dockingTreated: 'yes'}}");
    // 240 to 280 days
    assertThat(Taken.of("transport-departures", text))
        .isEqualTo("0–1 fact, ask plan-a/stage-1/transport/consolidationDays");
    assertThat(working(text)).isEqualTo("none");
    CaseText brief = text.at("/plans/0/stages/0/transport", "{consolidationDays: 230}");
    assertThat(working(brief)).isEqualTo("consolidation 230 days");
    CaseText closed = brief.at("/plans/0/stages/0/reduction", "{gapNearMm: 0, gapFarMm: 0}");
    assertThat(Taken.of("transport-departures", closed))
        .isEqualTo("0–1 fact, ask plan-a/stage-1/transport/consolidationDays");
  }

  private static String working(CaseText text) {
    return Taken.reading("transport-departures", Taken.subject(text.file(), "plan-a")).working();
  }

  @Test
  void a_transport_of_the_past_may_have_had_its_docking_site_treated() {
    CaseText text =
        CaseText.plated()
            .at("/operations/0/reduction", "{gapNearMm: 60, gapFarMm: 60}")
            .at(
                "/operations/0",
                "{transport: {latencyDays: 7, mmPerDay: 1, stepsPerDay: 4, consolidationDays:"
                    + " 240}}");
    assertThat(Taken.of("transport-departures", text))
        .isEqualTo("0–1 fact, ask op-1/transport/dockingTreated");
    assertThat(Taken.of("transport-used", CaseText.plated().redone("plate-bent")))
        .isEqualTo("no fact");
  }

  @Test
  void days_from_a_spacer_to_its_graft_are_counted_between_operations_too() {
    String second =
        ",{\"id\":\"op-2\",\"day\":%s,\"fixation\":[],\"removed\":[],\"biology\":[{\"kind\":\"%s\"}]}],\"plans\"";
    String text =
        CaseText.plated()
            .redone("plate-bent")
            .at(
                "/operations/0",
                "{day: {min: 2, max: 3}, biology: [{kind: 'spacer'}], outcome: {result:"
                    + " 'stage-done', day: 9, mode: null}}")
            .toString();
    CaseText grafted =
        CaseText.of(
            text.replace(
                "],\"plans\"", second.formatted("{\"min\":44,\"max\":47}", "reamer-graft")));
    // 44 - 3 to 47 - 2
    assertThat(Taken.of("spacer-days", grafted, "op-2")).startsWith("41–45 fact");
    // roughening the ends brings no graft
    CaseText roughened =
        CaseText.of(text.replace("],\"plans\"", second.formatted("44", "decortication")));
    assertThat(Taken.of("spacer-days", roughened, "op-2")).isEqualTo("none: no graft follows here");
    assertThat(Taken.of("spacer-grafted", roughened, "op-2"))
        .isEqualTo("none: judged where graft follows");
  }

  @Test
  void a_lag_screw_alone_does_not_hold_the_bone_round_a_spacer() {
    CaseText text =
        plan(
            "{id: 'a', biology: [{kind: 'spacer'}], removed: [{of: 'op-1/plate-1'}], fixation:"
                + " [{id: 'lag-1', kind: 'lag-screw'}]}");
    assertThat(Taken.of("spacer-held", text)).isEqualTo("no fact");
  }

  @Test
  void a_done_stage_that_does_not_tell_of_debridement_leaves_the_order_open() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/operations/0", "{outcome: {result: 'stage-done', day: 9, mode: null}}")
            .at("/plans/0", "{stages: [{id: 'a', " + STRUT + "}]}");
    String open = "first or later fact, ask plan-a/a/infectionCare/debridement";
    assertThat(Taken.of("structural-graft-stage", text)).isEqualTo(open);
    assertThat(
            Taken.of(
                "structural-graft-stage",
                text.at("/operations/0", "{infectionCare: {debridement: 'unknown'}}")))
        .isEqualTo(open);
    assertThat(
            Taken.of(
                "structural-graft-stage",
                text.at("/operations/0", "{infectionCare: {debridement: 'no'}}")))
        .isEqualTo("first fact");
  }

  private static final String STRUT =
      "fixation: [{id: 's', kind: 'strut', where: 'onlay', origin: 'allograft', fromMm: 150,"
          + " toMm: 210}], removed: []";

  @Test
  void a_strut_before_any_debridement_is_first_and_after_it_later() {
    String first = "{id: 'a', " + STRUT + "}";
    String second = "{id: 'b', " + STRUT + "}";
    assertThat(Taken.of("structural-graft-stage", plan(first))).isEqualTo("first fact");
    assertThat(Taken.of("structural-graft-stage", plan(SPACER, second))).isEqualTo("later fact");
    assertThat(Taken.of("structural-graft-stage", plan("{id: 'x', fixation: []}", second)))
        .isEqualTo("first fact");
    assertThat(Taken.of("structural-graft-stage", plan(SPACER, GRAFT))).isEqualTo("no fact");
  }

  @Test
  void a_living_strut_is_no_dead_bone_and_allograft_is() {
    String living = ("{id: 'a', " + STRUT + "}").replace("'allograft'", "'autograft-vascularised'");
    assertThat(Taken.of("structural-graft-stage", plan(living))).isEqualTo("no fact");
    assertThat(
            Taken.of("structural-graft-stage", plan("{id: 'a', biology: [{kind: 'allograft'}]}")))
        .isEqualTo("first fact");
    assertThat(Taken.of("structural-graft-stage", CaseText.bare()))
        .isEqualTo("unknown, ask op-1/fixation");
  }
}
