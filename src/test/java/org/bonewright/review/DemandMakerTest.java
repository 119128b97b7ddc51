package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.Test;

/** What a plan must achieve, and in which order it is told. */
class DemandMakerTest {

  private static final String STAGE = "plan-a/stage-1";
  private static final String SPAN = "plate-span-ratio";
  private static final String GAP = "residual-gap-closed";
  private static final String SAMPLES = "five-deep-samples";

  private static JudgedByHand hand() {
    return JudgedByHand.of(CaseText.plated().redone("plate-bent"));
  }

  private static PlanDemands demands(JudgedByHand hand) {
    return new DemandMaker(hand.judged(), JudgedByHand.RULES, hand.lines()).demands().get(0);
  }

  private static List<String> told(JudgedByHand hand) {
    return demands(hand).demands().stream()
        .map(d -> d.answer().principle() + " " + d.answer().verdict().word())
        .toList();
  }

  private static JudgedByHand unknown(JudgedByHand hand, String principle, Severity worst) {
    return hand.unknown(STAGE, principle, worst, List.of(JudgedByHand.fact("a")), List.of());
  }

  @Test
  void what_is_open_comes_first_then_what_is_met_then_what_no_longer_applies() {
    assertThat(
            told(
                unknown(hand().notApplicable(STAGE, SPAN).met(STAGE, GAP), SAMPLES, Severity.NOTE)
                    .unmet("op-1", SPAN, Severity.CRITICAL)))
        .containsExactly(
            "five-deep-samples unknown",
            "residual-gap-closed met",
            "plate-span-ratio not-applicable");
  }

  @Test
  void of_what_is_open_the_graver_comes_first_unmet_or_not() {
    assertThat(
            told(
                unknown(hand().unmet(STAGE, SPAN, Severity.MINOR), GAP, Severity.MAJOR)
                    .unmet(STAGE, SAMPLES, Severity.CRITICAL)))
        .containsExactly(
            "five-deep-samples unmet", "residual-gap-closed unknown", "plate-span-ratio unmet");
  }

  @Test
  void of_equally_grave_ones_the_certain_one_comes_first() {
    assertThat(told(unknown(hand(), GAP, Severity.MAJOR).unmet(STAGE, SPAN, Severity.MAJOR)))
        .containsExactly("plate-span-ratio unmet", "residual-gap-closed unknown");
  }

  @Test
  void of_equally_grave_ones_what_nobody_may_accept_comes_before_what_is_certain() {
    String never = "infection-needs-stability";
    assertThat(JudgedByHand.card(never).overridable()).isFalse();
    assertThat(told(unknown(hand().unmet(STAGE, GAP, Severity.CRITICAL), never, Severity.CRITICAL)))
        .containsExactly(never + " unknown", "residual-gap-closed unmet");
  }

  @Test
  void what_does_not_apply_is_told_only_where_the_history_teaches_it() {
    assertThat(told(hand().notApplicable(STAGE, SPAN))).isEmpty();
    assertThat(told(hand().notApplicable(STAGE, SPAN).met("op-1", SPAN))).isEmpty();
    assertThat(told(hand().notApplicable(STAGE, SPAN).unmet("op-1", SPAN, Severity.NOTE)))
        .containsExactly("plate-span-ratio not-applicable");
  }

  @Test
  void a_demand_names_the_operations_that_teach_it_and_not_the_plan() {
    JudgedByHand hand =
        hand()
            .unmet("op-1", SPAN, Severity.MAJOR)
            .unmet(STAGE, SPAN, Severity.MAJOR)
            .unmet(STAGE, GAP, Severity.MAJOR);
    assertThat(demands(hand).demands())
        .extracting(d -> d.answer().principle() + " " + d.taughtBy())
        .containsExactlyInAnyOrder("plate-span-ratio [op-1]", "residual-gap-closed []");
    assertThat(demands(hand).demands())
        .allSatisfy(
            d ->
                assertThat(d.statement())
                    .isEqualTo(JudgedByHand.card(d.answer().principle()).statement()));
  }

  @Test
  void two_remedies_that_pull_against_each_other_are_told_where_both_are_unmet() {
    String density = "plate-screw-density";
    String cortices = "cortices-per-side-conventional";
    JudgedByHand both =
        hand().unmet(STAGE, density, Severity.MINOR).unmet(STAGE, cortices, Severity.MAJOR);
    assertThat(demands(both).tensions())
        .singleElement()
        .satisfies(
            tension ->
                assertThat(tension)
                    .contains(
                        JudgedByHand.card(density).title(),
                        " against ",
                        JudgedByHand.card(cortices).title(),
                        ": the number on each side goes first")
                    .containsOnlyOnce(" against "));
    assertThat(
            demands(unknown(hand().unmet(STAGE, density, Severity.MINOR), cortices, Severity.MAJOR))
                .tensions())
        .isEmpty();
  }

  @Test
  void a_plan_that_is_not_chosen_does_not_decide() {
    CaseText two =
        CaseText.plated()
            .redone("plate-bent")
            .with(
                "{plans: [{id: 'plan-a', stages: []}, {id: 'plan-b', chosen: true, stages: []}]}");
    JudgedByHand hand = JudgedByHand.of(two);
    assertThat(new DemandMaker(hand.judged(), JudgedByHand.RULES, hand.lines()).demands())
        .extracting(d -> d.plan() + " " + d.decisive())
        .containsExactly("plan-a false", "plan-b true");
  }
}
