package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * What failed before is counted from certainly to possibly: what was left unmet under the factors
 * that the failure points to, and how much of it is unmet no longer.
 */
class VerdictCountsTest {

  private static final String SPAN = "plate-span-ratio"; // length
  private static final String CORTICES = "cortices-per-side-conventional"; // hold
  private static final String GAP = "residual-gap-closed"; // gap

  private static final Verdict MET = new Verdict.Met();
  private static final Verdict NOT_APPLICABLE = new Verdict.NotApplicable();
  private static final Verdict UNMET =
      new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "any", List.of());
  private static final Verdict OPEN = open(VerdictKind.MET, VerdictKind.UNMET);
  private static final Verdict HARMLESS = open(VerdictKind.MET, VerdictKind.NOT_APPLICABLE);

  /** Points to hold and length. */
  private static final CaseText PULLED_OUT =
      CaseText.plated().redone("screws-pulled-out-in-sequence");

  private static Verdict open(VerdictKind... possible) {
    return new Verdict.Unknown(Set.of(possible), Severity.MAJOR, List.of(), List.of());
  }

  private static Judgement judgement(String subject, String principle, Verdict verdict) {
    Card card = AllCells.RULES.card(principle).orElseThrow();
    return new Judgement(
        card,
        AllCells.RULES.family(card),
        subject,
        verdict,
        Precedence.baseSeverity(verdict),
        List.of(),
        List.of(),
        Map.of(),
        Map.of(),
        List.of(),
        Optional.empty());
  }

  private static Reading read(CaseText text, String count, String subject, Judgement... judged) {
    Map<String, List<Judgement>> bySubject = new HashMap<>();
    for (Judgement judgement : judged) {
      bySubject.merge(
          judgement.subject(),
          List.of(judgement),
          (a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream()).toList());
    }
    Subject of =
        Subject.of(text.file()).stream()
            .filter(s -> s.id().equals(subject))
            .findFirst()
            .orElseThrow();
    return new VerdictCounts(bySubject).read(count, of);
  }

  private static String shown(Reading reading) {
    return reading.shown();
  }

  @Nested
  class What_was_left_unmet {

    private static String before(Judgement... judged) {
      return shown(read(PULLED_OUT, VerdictCounts.UNMET_BEFORE, "plan-a", judged));
    }

    @Test
    void counts_where_the_failure_points_to_it() {
      assertThat(before(judgement("op-1", SPAN, UNMET), judgement("op-1", CORTICES, UNMET)))
          .isEqualTo("2");
      assertThat(before(judgement("op-1", GAP, UNMET))).isEqualTo("0");
    }

    @Test
    void counts_as_possible_where_it_may_have_been_unmet_and_not_where_it_cannot() {
      assertThat(before(judgement("op-1", SPAN, UNMET), judgement("op-1", CORTICES, OPEN)))
          .isEqualTo("1–2");
      assertThat(before(judgement("op-1", SPAN, HARMLESS), judgement("op-1", CORTICES, MET)))
          .isEqualTo("0");
    }

    @Test
    void is_named_or_none() {
      assertThat(
              read(PULLED_OUT, VerdictCounts.UNMET_BEFORE, "plan-a", judgement("op-1", SPAN, UNMET))
                  .working())
          .isEqualTo(SPAN);
      assertThat(read(PULLED_OUT, VerdictCounts.UNMET_BEFORE, "plan-a").working())
          .isEqualTo("none");
    }

    @Test
    void is_a_range_with_a_question_where_the_mode_leaves_open_which_of_two_it_was() {
      CaseText either = CaseText.plated().redone("screws-pulled-out");
      Reading read =
          read(
              either,
              VerdictCounts.UNMET_BEFORE,
              "plan-a",
              judgement("op-1", SPAN, UNMET),
              judgement("op-1", CORTICES, UNMET));
      assertThat(shown(read)).isEqualTo("1–2");
      assertThat(read.missing())
          .singleElement()
          .satisfies(fact -> assertThat(fact.field()).isEqualTo("op-1/outcome/mode"));
    }
  }

  @Nested
  class What_is_cured {

    private static String cured(CaseText text, Judgement... judged) {
      return shown(read(text, VerdictCounts.CURED, "plan-a", judged));
    }

    @Test
    void is_what_was_certainly_unmet_and_is_met_now() {
      assertThat(
              cured(
                  PULLED_OUT,
                  judgement("op-1", SPAN, UNMET),
                  judgement("plan-a/stage-1", SPAN, MET),
                  judgement("op-1", CORTICES, OPEN),
                  judgement("plan-a/stage-1", CORTICES, MET)))
          .isEqualTo("1");
    }

    @Test
    void is_nothing_that_is_still_unmet_and_perhaps_what_is_open() {
      assertThat(
              cured(
                  PULLED_OUT,
                  judgement("op-1", SPAN, UNMET),
                  judgement("plan-a/stage-1", SPAN, UNMET)))
          .isEqualTo("0");
      assertThat(
              cured(
                  PULLED_OUT,
                  judgement("op-1", SPAN, UNMET),
                  judgement("plan-a/stage-1", SPAN, OPEN)))
          .isEqualTo("0–1");
    }

    @Test
    void is_what_no_longer_applies_while_something_holds_the_bone() {
      Judgement unmet = judgement("op-1", SPAN, UNMET);
      Judgement gone = judgement("plan-a/stage-1", SPAN, NOT_APPLICABLE);
      assertThat(cured(PULLED_OUT, unmet, gone)).isEqualTo("1");
      CaseText bare =
          PULLED_OUT.at(
              "/plans/0/stages/0",
              "{fixation: [], compression: null, removed: [{of: 'op-1/plate-1'}]}");
      assertThat(cured(bare, unmet, gone)).isEqualTo("0");
    }

    @Test
    void is_looked_for_at_the_last_stage_of_a_plan() {
      CaseText two = PULLED_OUT.at("/plans/0", "{stages: [{id: 'stage-1'}, {id: 'stage-2'}]}");
      assertThat(
              cured(
                  two,
                  judgement("op-1", SPAN, UNMET),
                  judgement("plan-a/stage-1", SPAN, MET),
                  judgement("plan-a/stage-2", SPAN, UNMET)))
          .isEqualTo("0");
    }
  }

  @Nested
  class The_failure_that_counts {

    private static Reading after(String second) {
      CaseText text =
          CaseText.plated()
              .with(
                  """
                  {operations: [
                    {id: 'op-1', day: 1, outcome: {result: 'failed', mode: 'plate-bent'}},
                    {id: 'op-2', day: 2, outcome: %s}], plans: [{id: 'plan-a', stages: [{id: 's'}]}]}
                  """
                      .formatted(second));
      return read(
          text,
          VerdictCounts.UNMET_BEFORE,
          "plan-a",
          judgement("op-1", SPAN, UNMET),
          judgement("op-2", SPAN, UNMET),
          judgement("op-2", CORTICES, UNMET));
    }

    @Test
    void is_that_of_the_last_operation() {
      assertThat(shown(after("{result: 'failed', mode: 'screws-pulled-out-in-sequence'}")))
          .isEqualTo("2");
    }

    @Test
    void is_the_one_before_where_only_a_stage_was_done_in_between() {
      assertThat(shown(after("{result: 'stage-done'}"))).isEqualTo("1");
    }

    @Test
    void is_none_where_the_last_operation_tells_no_mode_or_none_came_before() {
      assertThat(after("{result: 'failed'}")).isInstanceOf(Reading.None.class);
      assertThat(read(CaseText.plated(), VerdictCounts.CURED, "op-1"))
          .isInstanceOf(Reading.None.class);
    }
  }
}
