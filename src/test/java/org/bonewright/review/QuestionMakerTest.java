package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.MissingFact;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.junit.jupiter.api.Test;

/** In which order questions are asked, and what an answer to each would settle. */
class QuestionMakerTest {

  private static final MissingFact A = JudgedByHand.fact("a");
  private static final MissingFact B = JudgedByHand.fact("b");
  private static final MissingFact C = JudgedByHand.fact("c");
  private static final String STAGE = "plan-a/stage-1";
  private static final String SPAN = "plate-span-ratio";
  private static final String GAP = "residual-gap-closed";
  private static final String SAMPLES = "five-deep-samples";

  private static JudgedByHand hand() {
    return JudgedByHand.of(CaseText.plated().redone("plate-bent"));
  }

  private static List<Question> questions(JudgedByHand hand) {
    return QuestionMaker.questions(hand.judged());
  }

  private static List<String> order(JudgedByHand hand) {
    return questions(hand).stream().map(Question::field).toList();
  }

  /** Leave a principle open on one question, which settles it. */
  private static JudgedByHand settled(
      JudgedByHand hand, String subject, String principle, Severity worst, MissingFact by) {
    return hand.unknown(subject, principle, worst, List.of(by), List.of(by));
  }

  @Test
  void what_settles_something_graver_is_asked_first() {
    for (Severity milder : List.of(Severity.NOTE, Severity.MINOR, Severity.MAJOR)) {
      JudgedByHand hand = settled(hand(), STAGE, SPAN, milder, A);
      assertThat(order(settled(hand, STAGE, GAP, milder.raised(), B))).containsExactly("b", "a");
    }
  }

  @Test
  void what_settles_something_graver_of_the_past_is_asked_first() {
    for (Severity milder : List.of(Severity.NOTE, Severity.MINOR, Severity.MAJOR)) {
      JudgedByHand hand = settled(hand(), "op-1", SPAN, milder, A);
      assertThat(order(settled(hand, "op-1", GAP, milder.raised(), B))).containsExactly("b", "a");
    }
  }

  @Test
  void of_equally_grave_ones_what_settles_it_for_a_plan_is_asked_first() {
    JudgedByHand hand = settled(hand(), "op-1", SPAN, Severity.CRITICAL, A);
    assertThat(order(settled(hand, STAGE, GAP, Severity.CRITICAL, B))).containsExactly("b", "a");
  }

  @Test
  void what_settles_more_of_them_is_asked_first() {
    JudgedByHand hand = settled(hand(), STAGE, SPAN, Severity.MAJOR, A);
    settled(hand, STAGE, GAP, Severity.MAJOR, B);
    settled(hand, STAGE, SAMPLES, Severity.MAJOR, B);
    assertThat(order(hand)).containsExactly("b", "a");
  }

  @Test
  void what_settles_nothing_alone_comes_by_how_much_it_touches_and_then_by_name() {
    JudgedByHand hand = hand().unknown(STAGE, SPAN, Severity.MAJOR, List.of(B, A, C), List.of());
    hand.unknown(STAGE, GAP, Severity.MAJOR, List.of(C), List.of());
    assertThat(order(hand)).containsExactly("c", "a", "b");
    assertThat(questions(hand)).extracting(Question::touches).containsExactly(2, 1, 1);
  }

  @Test
  void a_question_says_what_it_settles_the_gravest_first_and_what_else_it_touches() {
    JudgedByHand hand = settled(hand(), STAGE, SPAN, Severity.MINOR, A);
    settled(hand, "op-1", SPAN, Severity.MINOR, A);
    settled(hand, STAGE, GAP, Severity.MINOR, A);
    settled(hand, STAGE, SAMPLES, Severity.MAJOR, A);
    hand.unknown("op-1", GAP, Severity.CRITICAL, List.of(A, B), List.of());
    Question asked =
        questions(hand).stream().filter(q -> q.field().equals("a")).findFirst().orElseThrow();
    assertThat(asked.question()).isEqualTo("What about a?");
    assertThat(asked.settles())
        .extracting(s -> s.subject() + " " + s.principle() + " " + s.worst())
        .containsExactly(
            "plan-a/stage-1 five-deep-samples MAJOR",
            "op-1 plate-span-ratio MINOR",
            "plan-a/stage-1 plate-span-ratio MINOR",
            "plan-a/stage-1 residual-gap-closed MINOR");
    assertThat(asked.touches()).isEqualTo(1);
  }

  @Test
  void nobody_is_asked_about_what_can_only_be_met_or_does_not_apply() {
    Verdict harmless =
        new Verdict.Unknown(
            Set.of(VerdictKind.MET, VerdictKind.NOT_APPLICABLE),
            Severity.NOTE,
            List.of(A),
            List.of(A));
    assertThat(questions(hand().put(STAGE, SPAN, harmless, Optional.empty(), Optional.empty())))
        .isEmpty();
  }

  @Test
  void one_field_that_is_asked_for_in_two_ways_is_one_question() {
    MissingFact other = new MissingFact("a", "In other words, what about a?");
    JudgedByHand hand = settled(hand(), STAGE, SPAN, Severity.MAJOR, A);
    settled(hand, STAGE, GAP, Severity.MAJOR, other);
    hand.unknown(STAGE, SAMPLES, Severity.MAJOR, List.of(A, other), List.of());
    assertThat(questions(hand))
        .singleElement()
        .satisfies(question -> assertThat(question.settles()).hasSize(2))
        .satisfies(question -> assertThat(question.touches()).isEqualTo(1));
  }
}
