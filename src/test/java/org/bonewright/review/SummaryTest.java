package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.junit.jupiter.api.Test;

/** The upshot in one or two sentences. */
class SummaryTest {

  private static final String STAGE = "plan-a/stage-1";
  private static final CaseText PLANNED = CaseText.plated().redone("plate-bent");

  private static String summary(JudgedByHand hand) {
    JudgedCase judged = hand.judged();
    return Summary.of(judged, judged.caseFile().plans());
  }

  private static JudgedByHand planned() {
    return JudgedByHand.of(PLANNED);
  }

  @Test
  void says_how_many_operations_there_were_and_that_no_plan_is_on_file() {
    CaseText one = CaseText.plated();
    assertThat(summary(JudgedByHand.of(one))).isEqualTo("One operation. No plan is on file.");
    assertThat(summary(JudgedByHand.of(one.with("{operations: []}"))))
        .isEqualTo("No operation yet. No plan is on file.");
    assertThat(summary(JudgedByHand.of(one.with("{operations: [{id: 'op-1'}, {id: 'op-2'}]}"))))
        .isEqualTo("2 operations. No plan is on file.");
  }

  @Test
  void counts_what_a_plan_meets_and_says_where_nothing_is_unmet() {
    assertThat(
            summary(
                planned()
                    .met(STAGE, "plate-span-ratio")
                    .met("plan-a", "five-deep-samples")
                    .notApplicable(STAGE, "residual-gap-closed")
                    .unmet("op-1", "plate-span-ratio", Severity.MAJOR)))
        .isEqualTo("One operation. plan-a: nothing unmet; met 2.");
  }

  @Test
  void names_the_two_gravest_that_are_unmet_and_counts_the_rest() {
    assertThat(
            summary(
                planned()
                    .unmet(STAGE, "five-deep-samples", Severity.NOTE)
                    .unmet(STAGE, "plate-span-ratio", Severity.MAJOR)
                    .unmet(STAGE, "residual-gap-closed", Severity.CRITICAL)))
        .isEqualTo(
            "One operation. plan-a: unmet No gap left after compression (critical),"
                + " Plate long enough for the zone (major) and 1 more; met 0.");
  }

  @Test
  void names_just_two_without_more() {
    assertThat(
            summary(
                planned()
                    .unmet(STAGE, "plate-span-ratio", Severity.MAJOR)
                    .unmet(STAGE, "residual-gap-closed", Severity.CRITICAL)))
        .doesNotContain("more");
  }

  @Test
  void names_what_may_be_unmet_as_open_and_never_as_met() {
    assertThat(
            summary(
                planned()
                    .unknown(STAGE, "plate-span-ratio", Severity.MAJOR, List.of(), List.of())
                    .met(STAGE, "residual-gap-closed")))
        .isEqualTo(
            "One operation. plan-a: nothing unmet; open Plate long enough for the zone (major);"
                + " met 1.");
  }

  @Test
  void does_not_name_what_is_open_and_cannot_be_unmet() {
    Verdict harmless =
        new Verdict.Unknown(
            Set.of(VerdictKind.MET, VerdictKind.NOT_APPLICABLE),
            Severity.NOTE,
            List.of(),
            List.of());
    assertThat(
            summary(
                planned()
                    .put(STAGE, "plate-span-ratio", harmless, Optional.empty(), Optional.empty())))
        .isEqualTo("One operation. plan-a: nothing unmet; met 0.");
  }
}
