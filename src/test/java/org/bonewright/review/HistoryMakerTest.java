package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What several operations left unmet, and what was tried again and again. */
class HistoryMakerTest {

  private static final String SPAN = "plate-span-ratio";
  private static final String GAP = "residual-gap-closed";
  private static final String SPAN_TITLE = "Plate long enough for the zone";
  private static final String GAP_TITLE = "No gap left after compression";

  private static JudgedByHand three() {
    return JudgedByHand.of(
        CaseText.plated().with("{operations: [{id: 'op-1'}, {id: 'op-2'}, {id: 'op-3'}]}"));
  }

  private static History history(JudgedByHand hand) {
    return new HistoryMaker(hand.judged(), JudgedByHand.RULES).history();
  }

  @Nested
  class Never_put_right {

    @ParameterizedTest
    @CsvSource({"NOTE, 0", "MINOR, 0", "MAJOR, 1", "CRITICAL, 1"})
    void is_what_was_left_unmet_at_major_or_more(Severity severity, int told) {
      assertThat(history(three().unmet("op-3", SPAN, severity)).neverAddressed()).hasSize(told);
    }

    @Test
    void is_named_with_every_operation_that_left_it_in_a_row() {
      assertThat(
              history(
                      three()
                          .unmet("op-1", SPAN, Severity.MAJOR)
                          .unmet("op-2", SPAN, Severity.MINOR)
                          .unmet("op-3", SPAN, Severity.NOTE))
                  .neverAddressed())
          .containsExactly(SPAN_TITLE + " (op-1, op-2, op-3)");
    }

    @Test
    void is_nothing_that_a_later_operation_met_or_made_pointless() {
      assertThat(
              history(
                      three()
                          .unmet("op-1", SPAN, Severity.CRITICAL)
                          .met("op-2", SPAN)
                          .unmet("op-1", GAP, Severity.CRITICAL)
                          .notApplicable("op-2", GAP))
                  .neverAddressed())
          .isEmpty();
    }

    @Test
    void counts_anew_after_it_was_met() {
      assertThat(
              history(
                      three()
                          .unmet("op-1", SPAN, Severity.CRITICAL)
                          .met("op-2", SPAN)
                          .unmet("op-3", SPAN, Severity.MINOR))
                  .neverAddressed())
          .isEmpty();
    }

    @Test
    void names_no_operation_before_one_that_met_it() {
      assertThat(
              history(
                      three()
                          .unmet("op-1", SPAN, Severity.CRITICAL)
                          .met("op-2", SPAN)
                          .unmet("op-3", SPAN, Severity.MAJOR))
                  .neverAddressed())
          .containsExactly(SPAN_TITLE + " (op-3)");
    }

    @Test
    void is_not_put_right_by_what_is_unknown() {
      assertThat(
              history(
                      three()
                          .unmet("op-1", SPAN, Severity.MAJOR)
                          .unknown("op-2", SPAN, Severity.MAJOR, List.of(), List.of())
                          .unmet("op-3", SPAN, Severity.MAJOR)
                          .unmet("op-2", GAP, Severity.MAJOR)
                          .unknown("op-3", GAP, Severity.MAJOR, List.of(), List.of()))
                  .neverAddressed())
          .containsExactly(SPAN_TITLE + " (op-1, op-3)", GAP_TITLE + " (op-2)");
    }

    @Test
    void tells_first_what_was_left_most_often_and_then_the_gravest() {
      assertThat(
              history(
                      three()
                          .unmet("op-2", GAP, Severity.MAJOR)
                          .unmet("op-3", GAP, Severity.MAJOR)
                          .unmet("op-3", SPAN, Severity.CRITICAL)
                          .unmet("op-1", "five-deep-samples", Severity.CRITICAL)
                          .unmet("op-2", "five-deep-samples", Severity.CRITICAL)
                          .unknown(
                              "op-3", "five-deep-samples", Severity.MAJOR, List.of(), List.of()))
                  .neverAddressed())
          .containsExactly(
              "Five deep samples and histology (op-1, op-2)",
              GAP_TITLE + " (op-2, op-3)",
              SPAN_TITLE + " (op-3)");
    }

    @Test
    void says_nothing_of_a_plan() {
      assertThat(
              history(
                      JudgedByHand.of(CaseText.plated().redone("plate-bent"))
                          .unmet("plan-a/stage-1", SPAN, Severity.CRITICAL)
                          .unmet("plan-a", SPAN, Severity.CRITICAL))
                  .neverAddressed())
          .isEmpty();
    }
  }

  @Nested
  class Tried_twice {

    private static final String FAILED = ", outcome: {result: 'failed', mode: 'plate-bent'}";

    private static List<String> tried(String... operations) {
      return history(
              JudgedByHand.of(
                  CaseText.plated().with("{operations: [" + String.join(", ", operations) + "]}")))
          .triedTwice();
    }

    private static String with(String id, String fixation, String biology, String outcome) {
      return "{id: '%s', fixation: [%s], biology: [%s]%s}"
          .formatted(id, fixation, biology, outcome);
    }

    private static String implants(String... kinds) {
      StringBuilder all = new StringBuilder();
      for (int i = 0; i < kinds.length; i++) {
        all.append(i > 0 ? ", " : "").append("{id: 'i-").append(i).append("', kind: '");
        all.append(kinds[i]).append("'");
        all.append(kinds[i].equals("strut") ? ", where: 'onlay', fromMm: 150, toMm: 210}" : "}");
      }
      return all.toString();
    }

    @ParameterizedTest
    @CsvSource({
      "plate, plate",
      "nail, nail",
      "external-fixator, external fixator",
      "cerclage, cerclage",
      "lag-screw, lag screw",
      "strut, strut"
    })
    void is_an_implant_with_which_two_operations_failed(String kind, String named) {
      assertThat(
              tried(
                  with("op-1", implants(kind), "", FAILED),
                  with("op-2", implants(kind, kind), "", FAILED)))
          .containsExactly(named + " (op-1, op-2)");
    }

    @Test
    void is_a_graft_with_which_two_operations_failed() {
      String graft = "{kind: 'autograft-cancellous'}";
      assertThat(tried(with("op-1", "", graft, FAILED), with("op-2", "", graft, FAILED)))
          .containsExactly("autograft cancellous (op-1, op-2)");
    }

    @Test
    void is_nothing_that_failed_once_or_that_held_the_other_time() {
      String plate = implants("plate");
      assertThat(tried(with("op-1", plate, "", FAILED))).isEmpty();
      assertThat(
              tried(
                  with("op-1", plate, "", ", outcome: {result: 'united'}"),
                  with("op-2", plate, "", FAILED)))
          .isEmpty();
      assertThat(tried(with("op-1", plate, "", FAILED), with("op-2", implants("nail"), "", FAILED)))
          .isEmpty();
    }
  }
}
