package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.Test;

/** Of every acceptance it is said what it meets; none hides anything. */
class AcceptancesTest {

  private static final String SPAN = "plate-span-ratio";

  private static JudgedByHand accepted(String principle, String on) {
    return JudgedByHand.of(
        CaseText.plated()
            .redone("plate-bent")
            .with(
                "{accepted: [{principle: '%s', on: '%s', reason: 'wish', by: 'consultant'}]}"
                    .formatted(principle, on)));
  }

  private static String line(JudgedByHand hand) {
    List<String> lines = Acceptances.lines(hand.judged(), JudgedByHand.RULES);
    assertThat(lines).hasSize(1);
    return lines.get(0);
  }

  @Test
  void of_what_is_unmet_leaves_it_visible() {
    assertThat(
            line(
                accepted(SPAN, "plan-a")
                    .unknown("plan-a", SPAN, Severity.MAJOR, List.of(), List.of())
                    .unmet("plan-a/stage-1", SPAN, Severity.MAJOR)))
        .isEqualTo(
            "Plate long enough for the zone on plan-a, by consultant: wish [unmet, stays visible]");
  }

  @Test
  void of_what_is_not_known_leaves_it_open() {
    assertThat(
            line(
                accepted(SPAN, "plan-a")
                    .unknown("plan-a/stage-1", SPAN, Severity.MAJOR, List.of(), List.of())))
        .endsWith("[still open]");
  }

  @Test
  void of_nothing_unmet_says_so_whatever_else_is_unmet_elsewhere() {
    assertThat(
            line(
                accepted(SPAN, "plan-a")
                    .met("plan-a/stage-1", SPAN)
                    .unmet("op-1", SPAN, Severity.MAJOR)
                    .unmet("plan-a/stage-1", "residual-gap-closed", Severity.MAJOR)))
        .endsWith("[nothing unmet to accept]");
  }

  @Test
  void of_what_nobody_may_accept_is_refused_though_it_is_unmet() {
    String never = "infection-confirmatory-sign-stops-plan";
    assertThat(line(accepted(never, "plan-a").unmet("plan-a", never, Severity.CRITICAL)))
        .endsWith("[not open to acceptance]");
  }

  @Test
  void of_what_is_no_principle_says_so() {
    assertThat(line(accepted("no-such-thing", "plan-a")))
        .isEqualTo("no-such-thing on plan-a, by consultant: wish [no such principle here]");
  }
}
