package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Subject;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which order findings are told beside a failure, whatever their surgery was. */
class FailureOrderTest {

  private static final String SPAN = "plate-span-ratio"; // length
  private static final String CORTICES = "cortices-per-side-conventional"; // hold
  private static final String ZONE = "screw-not-in-zone"; // hold
  private static final String GAP = "residual-gap-closed"; // gap
  private static final String FAR = "far-cortex-supported"; // gap
  private static final String SAMPLES = "five-deep-samples"; // infection

  private static JudgedByHand failed(String outcome) {
    return JudgedByHand.of(
        CaseText.plated().at("/operations/0", "{outcome: {result: 'failed', " + outcome + "}}"));
  }

  /** Failed by a mode that has nothing to do with the findings here, and nobody knows when. */
  private static JudgedByHand unread() {
    return failed("note: 'no mode'");
  }

  private static FailureReasons reasons(JudgedByHand hand) {
    JudgedCase judged = hand.judged();
    Subject operation = judged.subjects().get(0);
    return new FailureReasons(
        judged.scene(operation), hand.of("op-1"), JudgedByHand.RULES.failures(), hand.lines());
  }

  private static List<String> told(List<Headline> headlines) {
    return headlines.stream().map(h -> h.lead().principle() + " by " + h.placedBy()).toList();
  }

  private static JudgedByHand unmet(JudgedByHand hand, Severity severity, String... principles) {
    for (String principle : principles) {
      hand.unmet("op-1", principle, severity);
    }
    return hand;
  }

  @Nested
  class Placed {

    @Test
    void by_the_row_of_the_mode_before_severity() {
      JudgedByHand hand = failed("mode: 'screws-pulled-out-in-sequence'");
      unmet(hand, Severity.CRITICAL, SPAN, GAP);
      FailureReasons reasons = reasons(unmet(hand, Severity.MINOR, CORTICES));
      assertThat(told(reasons.fits()))
          .containsExactly(CORTICES + " by failure mode", SPAN + " by failure mode");
      assertThat(told(reasons.others())).containsExactly(GAP + " by severity");
    }

    @Test
    void by_the_time_of_failure_before_severity() {
      JudgedByHand hand = unmet(failed("day: 16"), Severity.CRITICAL, GAP);
      assertThat(told(reasons(unmet(hand, Severity.MINOR, SPAN)).others()))
          .containsExactly(SPAN + " by time of failure", GAP + " by time of failure");
    }

    @Test
    void by_severity_before_the_name() {
      JudgedByHand hand = unmet(unread(), Severity.MINOR, CORTICES);
      assertThat(told(reasons(unmet(hand, Severity.MAJOR, SPAN)).others()))
          .containsExactly(SPAN + " by severity", CORTICES + " by severity");
    }

    @Test
    void by_the_name_where_nothing_else_tells_them_apart() {
      assertThat(told(reasons(unmet(unread(), Severity.MAJOR, SPAN, CORTICES)).others()))
          .containsExactly(CORTICES + " by name", SPAN + " by name");
    }

    /** The first is compared with what follows it, each other with what stands before it. */
    @Test
    void each_by_what_tells_it_from_its_neighbour() {
      JudgedByHand hand = unmet(unread(), Severity.MINOR, GAP);
      assertThat(told(reasons(unmet(hand, Severity.MAJOR, SPAN, CORTICES)).others()))
          .containsExactly(CORTICES + " by name", SPAN + " by name", GAP + " by severity");
    }

    @Test
    void alone_by_the_mode_or_by_severity() {
      JudgedByHand pulledOut = failed("mode: 'screws-pulled-out-in-sequence'");
      assertThat(told(reasons(unmet(pulledOut, Severity.MAJOR, CORTICES)).fits()))
          .containsExactly(CORTICES + " by failure mode");
      assertThat(told(reasons(unmet(unread(), Severity.MAJOR, CORTICES)).others()))
          .containsExactly(CORTICES + " by severity");
    }
  }

  @Test
  void findings_of_one_cause_stand_together_under_the_gravest() {
    JudgedByHand hand = failed("mode: 'plate-bent'");
    unmet(hand, Severity.MINOR, FAR);
    unmet(hand, Severity.MAJOR, GAP, SPAN);
    List<Headline> others = reasons(hand).others();
    assertThat(others).extracting(Headline::cause).containsExactly("length", "gap");
    assertThat(others.get(1).lead().principle()).isEqualTo(GAP);
    assertThat(others.get(1).nested()).extracting(Line::principle).containsExactly(FAR);
  }

  @Test
  void a_milder_finding_that_fits_draws_the_rest_of_its_cause_with_it() {
    JudgedByHand hand = failed("mode: 'screws-pulled-out-in-sequence'");
    unmet(hand, Severity.MINOR, CORTICES);
    unmet(hand, Severity.CRITICAL, ZONE);
    Headline fits = reasons(hand).fits().get(0);
    assertThat(fits.lead().principle()).isEqualTo(ZONE);
    assertThat(fits.nested()).extracting(Line::principle).containsExactly(CORTICES);
    assertThat(reasons(hand).others()).isEmpty();
  }

  @Nested
  class Unexplained {

    @ParameterizedTest
    @CsvSource({"NOTE, true", "MINOR, true", "MAJOR, false", "CRITICAL, false"})
    void is_a_failure_without_a_major_fault_of_what_was_built(
        Severity severity, boolean unexplained) {
      assertThat(reasons(unmet(unread(), severity, CORTICES)).unexplained()).isEqualTo(unexplained);
    }

    @Test
    void is_a_failure_where_only_something_else_than_what_was_built_is_at_fault() {
      assertThat(reasons(unmet(unread(), Severity.CRITICAL, SAMPLES)).unexplained()).isTrue();
    }

    @Test
    void is_none_that_something_fits_however_mild() {
      JudgedByHand hand = failed("mode: 'screws-pulled-out-in-sequence'");
      assertThat(reasons(unmet(hand, Severity.NOTE, CORTICES)).unexplained()).isFalse();
    }

    @Test
    void is_none_by_infection_and_nothing_that_did_not_fail() {
      assertThat(reasons(failed("mode: 'infection'")).unexplained()).isFalse();
      assertThat(reasons(JudgedByHand.of(CaseText.plated())).unexplained()).isFalse();
    }
  }

  @Test
  void what_fits_a_mode_that_the_operation_did_not_come_to_places_nothing() {
    JudgedByHand united =
        JudgedByHand.of(
            CaseText.plated().at("/operations/0", "{outcome: {result: 'united', day: 16}}"));
    unmet(united, Severity.MINOR, SPAN);
    assertThat(told(reasons(unmet(united, Severity.MAJOR, GAP)).others()))
        .containsExactly(GAP + " by severity", SPAN + " by severity");
  }
}
