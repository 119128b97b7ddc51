package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** Beside which plans a published result of the next operation is shown. */
class PublishedBesidePlanTest {

  private static final CaseText NAIL_AGAIN = CaseText.nailed().redone("nail-broken-at-bolt-hole");

  private static final String PLATE =
      "fixation: [{id: 'plate-1', kind: 'plate', surface: 'medial', holes: 10}]";

  private static String shown(CaseText text) {
    JudgedByHand hand = JudgedByHand.of(text);
    return new HistoryMaker(hand.judged(), JudgedByHand.RULES)
        .history()
        .prognosis()
        .orElse("nothing");
  }

  private static CaseText clavicle(String biology) {
    return CaseText.plated()
        .redone("plate-bent")
        .at("/bone", "{name: 'clavicle'}")
        .at("/plans/0/stages/0", "{biology: " + biology + "}");
  }

  @Test
  void one_of_a_nail_for_a_nail_stands_beside_a_nail_for_a_nail() {
    assertThat(shown(NAIL_AGAIN)).startsWith("One exchange nail healed 63 % of tibiae");
  }

  @Test
  void none_stands_where_no_operation_failed() {
    assertThat(shown(NAIL_AGAIN.at("/operations/0", "{outcome: {result: 'united', mode: null}}")))
        .isEqualTo("nothing");
  }

  @Test
  void none_stands_where_several_plans_may_be_carried_out() {
    CaseText two =
        NAIL_AGAIN.with(
            "{plans: [{id: 'plan-a', stages: [{id: 'a'}]}, {id: 'plan-b', stages: [{id: 'b'}]}]}");
    assertThat(shown(two)).isEqualTo("nothing");
  }

  @Test
  void none_stands_beside_a_plan_with_neither_or_both_of_plate_and_nail() {
    assertThat(shown(NAIL_AGAIN.at("/plans/0/stages/0", "{fixation: []}"))).isEqualTo("nothing");
    CaseText clavicle = CaseText.plated().redone("plate-bent").at("/bone", "{name: 'clavicle'}");
    CaseText both =
        clavicle.at(
            "/plans/0",
            "{stages: [{id: 'a', "
                + PLATE
                + "},"
                + " {id: 'b', fixation: [{id: 'nail-1', kind: 'nail'}]}]}");
    assertThat(shown(both)).isEqualTo("nothing");
  }

  @Test
  void graft_counts_only_where_some_is_put_in() {
    assertThat(shown(clavicle("[{kind: 'autograft-cancellous'}]")))
        .startsWith("Revised clavicles healed in 93 % with graft");
    assertThat(shown(clavicle("[]"))).startsWith("Revised clavicles healed in 72 % without graft");
    assertThat(shown(clavicle("null")))
        .startsWith("Revised clavicles healed in 72 % without graft");
  }

  @Test
  void a_plate_over_a_nail_that_stays_is_told_from_a_nail_for_a_nail() {
    CaseText femur =
        CaseText.nailed().redone("no-union-metal-intact").at("/bone", "{name: 'femur'}");
    assertThat(shown(femur)).startsWith("An exchange nail healed 85 % of 644 femora");
    CaseText over = femur.at("/plans/0/stages/0", "{removed: [], " + PLATE + "}");
    assertThat(shown(over)).startsWith("A plate over the nail healed nearly all");
    CaseText instead =
        femur.at("/plans/0/stages/0", "{removed: [{of: 'op-1/nail-1'}], " + PLATE + "}");
    assertThat(shown(instead)).isEqualTo("nothing");
  }
}
