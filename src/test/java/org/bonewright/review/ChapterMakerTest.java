package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Subject;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The account of one subject: what stands where, and in which order. */
class ChapterMakerTest {

  private static final String SPAN = "plate-span-ratio";
  private static final String GAP = "residual-gap-closed";
  private static final String CORTICES = "cortices-per-side-conventional";
  private static final String SAMPLES = "five-deep-samples";

  private static Chapter chapter(JudgedByHand hand, String subject) {
    JudgedCase judged = hand.judged();
    Subject of =
        judged.subjects().stream().filter(s -> s.id().equals(subject)).findFirst().orElseThrow();
    return new ChapterMaker(hand.lines(), JudgedByHand.RULES, judged).chapter(judged, of);
  }

  private static JudgedByHand once() {
    return JudgedByHand.of(CaseText.plated());
  }

  private static List<String> principles(List<Line> lines) {
    return lines.stream().map(Line::principle).toList();
  }

  @Test
  void what_is_met_unknown_or_does_not_apply_stands_apart_from_what_is_unmet() {
    Chapter chapter =
        chapter(
            once()
                .unmet("op-1", CORTICES, Severity.MAJOR)
                .met("op-1", SPAN)
                .unknown("op-1", GAP, Severity.MAJOR, List.of(), List.of())
                .notApplicable("op-1", "nail-diameter-fits-isthmus")
                .notApplicable("op-1", "two-bolts-each-end"),
            "op-1");
    assertThat(chapter.others())
        .extracting(headline -> headline.lead().principle())
        .containsExactly(CORTICES);
    assertThat(principles(chapter.met())).containsExactly(SPAN);
    assertThat(principles(chapter.unknown())).containsExactly(GAP);
    assertThat(chapter.notApplicable()).isEqualTo(2);
  }

  @Test
  void what_is_unknown_comes_by_how_bad_it_may_be_then_by_family_and_name() {
    Chapter chapter =
        chapter(
            once()
                .unknown("op-1", "screw-not-in-zone", Severity.MINOR, List.of(), List.of())
                .unknown("op-1", SPAN, Severity.MINOR, List.of(), List.of())
                .unknown("op-1", GAP, Severity.MINOR, List.of(), List.of())
                .unknown("op-1", CORTICES, Severity.CRITICAL, List.of(), List.of()),
            "op-1");
    assertThat(principles(chapter.unknown()))
        .containsExactly(CORTICES, GAP, SPAN, "screw-not-in-zone");
  }

  @Nested
  class What_the_past_did_not_record {

    private static Chapter after(String findings, String subject) {
      CaseText text = CaseText.plated().redone("plate-bent").with("{findings: [" + findings + "]}");
      return chapter(
          JudgedByHand.of(text).unknown(subject, SAMPLES, Severity.MAJOR, List.of(), List.of()),
          subject);
    }

    @Test
    void of_infection_is_one_line_with_the_rest() {
      Chapter chapter = after("", "op-1");
      assertThat(chapter.unknown()).isEmpty();
      assertThat(chapter.noRecord()).containsExactly(JudgedByHand.card(SAMPLES).title());
    }

    @Test
    void is_an_unknown_of_its_own_where_something_was_looked_for() {
      assertThat(principles(after("{day: 1, infection: {pus: 'absent'}}", "op-1").unknown()))
          .containsExactly(SAMPLES);
    }

    @Test
    void is_an_unknown_of_its_own_for_a_plan_that_can_still_ask() {
      assertThat(principles(after("", "plan-a").unknown())).containsExactly(SAMPLES);
    }
  }

  @Nested
  class The_head {

    @Test
    void says_the_day_and_what_was_done_and_what_came_of_it() {
      Chapter chapter =
          chapter(
              JudgedByHand.of(
                  CaseText.plated().at("/operations/0", "{outcome: {result: 'united', day: 90}}")),
              "op-1");
      assertThat(chapter.what()).startsWith("day 2: 10-hole medial");
      assertThat(chapter.outcome()).contains("United by day 90");
      assertThat(chapter.planned()).isFalse();
    }

    @Test
    void of_a_plan_counts_its_stages_where_there_are_several_and_has_no_outcome() {
      CaseText one = CaseText.plated().redone("plate-bent");
      assertThat(chapter(JudgedByHand.of(one), "plan-a").what()).isEqualTo("the plan as a whole");
      Chapter two =
          chapter(
              JudgedByHand.of(one.at("/plans/0", "{stages: [{id: 'a'}, {id: 'b'}]}")), "plan-a");
      assertThat(two.what()).isEqualTo("the plan as a whole, 2 stages");
      assertThat(two.planned()).isTrue();
      assertThat(two.outcome()).isEqualTo(Optional.empty());
    }
  }

  @Test
  void a_fault_that_is_not_shown_keeps_a_failure_from_being_unexplained() {
    CaseText failed =
        CaseText.plated()
            .at("/operations/0", "{outcome: {result: 'failed'}}")
            .with("{findings: [{day: 1, host: {smoking: 'current'}}]}");
    JudgedByHand whole = JudgedByHand.of(failed).unmet("op-1", CORTICES, Severity.MAJOR);
    JudgedCase shown = JudgedByHand.of(failed).judged();
    Subject operation = shown.subjects().get(0);
    Chapter explained =
        new ChapterMaker(whole.lines(), JudgedByHand.RULES, whole.judged())
            .chapter(shown, operation);
    assertThat(explained.unexplained()).isFalse();
    assertThat(explained.hostBefore()).isEmpty();
    Chapter unexplained = chapter(JudgedByHand.of(failed), "op-1");
    assertThat(unexplained.unexplained()).isTrue();
    assertThat(unexplained.hostBefore()).containsExactly("smoking");
  }
}
