package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Plan;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What counts of the verdicts on a plan and its stages. */
class PlanVerdictsTest {

  private static final String SPAN = "plate-span-ratio";
  private static final String STAGE = "plan-a/stage-1";
  private static final String SECOND = "plan-a/stage-2";

  private static CaseText two() {
    return CaseText.plated()
        .redone("plate-bent")
        .at("/plans/0", "{stages: [{id: 'stage-1'}, {id: 'stage-2'}]}");
  }

  private static JudgedByHand hand() {
    return JudgedByHand.of(two());
  }

  private static PlanVerdicts verdicts(JudgedByHand hand) {
    JudgedCase judged = hand.judged();
    return new PlanVerdicts(judged, judged.caseFile().plans().get(0));
  }

  private static String worst(JudgedByHand hand) {
    return shown(verdicts(hand).worst(SPAN).orElseThrow());
  }

  private static List<String> telling(JudgedByHand hand) {
    return verdicts(hand).telling(SPAN).stream().map(PlanVerdictsTest::shown).toList();
  }

  private static String shown(Judgement judgement) {
    return judgement.subject() + " " + judgement.verdict().kind().word();
  }

  private static JudgedByHand unknown(JudgedByHand hand, String subject, Severity worst) {
    return hand.unknown(subject, SPAN, worst, List.of(JudgedByHand.fact("a")), List.of());
  }

  @Nested
  class The_worst {

    @Test
    void is_the_gravest_of_what_is_or_may_be_unmet() {
      assertThat(
              worst(hand().unmet(STAGE, SPAN, Severity.MINOR).unmet(SECOND, SPAN, Severity.MAJOR)))
          .isEqualTo("plan-a/stage-2 unmet");
      assertThat(worst(unknown(hand().unmet(STAGE, SPAN, Severity.MINOR), SECOND, Severity.MAJOR)))
          .isEqualTo("plan-a/stage-2 unknown");
    }

    @Test
    void is_of_equal_ones_what_is_unmet_and_then_the_first_stage() {
      assertThat(worst(unknown(hand(), STAGE, Severity.MAJOR).unmet(SECOND, SPAN, Severity.MAJOR)))
          .isEqualTo("plan-a/stage-2 unmet");
      assertThat(
              worst(hand().unmet(SECOND, SPAN, Severity.MAJOR).unmet(STAGE, SPAN, Severity.MAJOR)))
          .isEqualTo("plan-a/stage-1 unmet");
    }

    @Test
    void is_what_is_open_before_what_is_met_before_what_does_not_apply() {
      assertThat(worst(unknown(hand().met(STAGE, SPAN), SECOND, Severity.NOTE)))
          .isEqualTo("plan-a/stage-2 unknown");
      assertThat(worst(hand().notApplicable(STAGE, SPAN).met(SECOND, SPAN)))
          .isEqualTo("plan-a/stage-2 met");
    }

    @Test
    void is_none_of_an_operation_or_of_another_principle() {
      assertThat(
              verdicts(
                      hand()
                          .unmet("op-1", SPAN, Severity.MAJOR)
                          .unmet(STAGE, "five-deep-samples", Severity.MAJOR))
                  .worst(SPAN))
          .isEqualTo(Optional.empty());
    }
  }

  @Nested
  class What_tells_about_a_plan {

    @Test
    void is_the_worst_unmet_and_the_worst_unknown() {
      JudgedByHand open = hand().met("plan-a", SPAN).unmet(STAGE, SPAN, Severity.MAJOR);
      assertThat(telling(unknown(open, SECOND, Severity.MAJOR)))
          .containsExactly("plan-a/stage-1 unmet", "plan-a/stage-2 unknown");
    }

    @Test
    void is_the_unmet_one_too_where_an_unknown_one_may_be_graver() {
      JudgedByHand open = hand().unmet(STAGE, SPAN, Severity.MINOR);
      assertThat(telling(unknown(open, SECOND, Severity.CRITICAL)))
          .containsExactly("plan-a/stage-1 unmet", "plan-a/stage-2 unknown");
    }

    @Test
    void is_of_its_own_principle_only() {
      assertThat(
              telling(
                  hand().met(SECOND, SPAN).unmet(STAGE, "residual-gap-closed", Severity.CRITICAL)))
          .containsExactly("plan-a/stage-2 met");
    }

    @Test
    void is_else_one_that_is_met_or_says_that_it_does_not_apply() {
      assertThat(telling(hand().notApplicable(STAGE, SPAN).met(SECOND, SPAN)))
          .containsExactly("plan-a/stage-2 met");
      assertThat(telling(hand().notApplicable(STAGE, SPAN)))
          .containsExactly("plan-a/stage-1 not-applicable");
    }
  }

  @Nested
  class Something_critical_stays_open {

    @ParameterizedTest
    @EnumSource(Severity.class)
    void where_it_is_unmet_and_critical(Severity severity) {
      assertThat(verdicts(hand().unmet(STAGE, SPAN, severity)).leavesCriticalOpen())
          .isEqualTo(severity == Severity.CRITICAL);
    }

    @ParameterizedTest
    @EnumSource(Severity.class)
    void where_it_may_be_critical_and_there_is_something_to_ask(Severity severity) {
      assertThat(verdicts(unknown(hand(), STAGE, severity)).leavesCriticalOpen())
          .isEqualTo(severity == Severity.CRITICAL);
    }

    @Test
    void where_the_samples_of_a_model_are_split_on_it() {
      assertThat(verdicts(hand().split(STAGE, SPAN, Severity.CRITICAL)).leavesCriticalOpen())
          .isTrue();
    }

    @Test
    void not_where_only_a_range_leaves_it_open() {
      assertThat(
              verdicts(hand().unknown(STAGE, SPAN, Severity.CRITICAL, List.of(), List.of()))
                  .leavesCriticalOpen())
          .isFalse();
    }

    @Test
    void not_by_what_an_operation_left_unmet() {
      assertThat(verdicts(hand().unmet("op-1", SPAN, Severity.CRITICAL)).leavesCriticalOpen())
          .isFalse();
    }

    /** A severity stands on nothing else; if it did, it would open nothing. */
    @Test
    void not_by_what_is_met() {
      assertThat(
              verdicts(
                      hand()
                          .put(
                              STAGE,
                              SPAN,
                              new Verdict.Met(),
                              Optional.of(Severity.CRITICAL),
                              Optional.empty()))
                  .leavesCriticalOpen())
          .isFalse();
    }
  }

  @Test
  void all_plans_decide_until_one_is_chosen() {
    CaseText plans =
        two().with("{plans: [{id: 'plan-a', stages: []}, {id: 'plan-b', stages: []}]}");
    assertThat(PlanVerdicts.decisive(plans.file()))
        .extracting(Plan::id)
        .containsExactly("plan-a", "plan-b");
    assertThat(PlanVerdicts.decisive(plans.at("/plans/1", "{chosen: true}").file()))
        .extracting(Plan::id)
        .containsExactly("plan-b");
    assertThat(PlanVerdicts.decisive(plans.at("/plans/1", "{chosen: false}").file())).hasSize(2);
  }

  @Test
  void the_verdicts_of_a_plan_are_those_on_it_and_on_its_stages() {
    assertThat(
            verdicts(
                    hand()
                        .met("op-1", SPAN)
                        .met("plan-a", SPAN)
                        .met(STAGE, SPAN)
                        .met(SECOND, SPAN)
                        .met("plan-b", SPAN))
                .all())
        .extracting(Judgement::subject)
        .containsExactlyInAnyOrder("plan-a", STAGE, SECOND)
        .hasSize(3);
  }
}
