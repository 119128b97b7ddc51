package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.Test;

/** What the operations so far teach together. */
class HistoryTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  private static History history(CaseText text) {
    return REVIEWER.review(text.file()).history();
  }

  private static CaseText weak() {
    return CaseText.plated()
        .at("/operations/0/fixation/0", "{screws: [{at: [1, 10], type: 'cortical'}]}");
  }

  @Test
  void what_the_last_operation_left_gravely_unmet_is_not_yet_put_right() {
    assertThat(history(weak().redone("screws-pulled-out-in-sequence")).neverAddressed())
        .anyMatch(lesson -> lesson.startsWith("Enough cortices on each side (op-1)"));
  }

  @Test
  void what_was_kept_is_not_named() {
    assertThat(history(CaseText.plated().redone("screws-pulled-out-in-sequence")).neverAddressed())
        .noneMatch(lesson -> lesson.startsWith("Enough cortices on each side"));
  }

  @Test
  void one_operation_has_tried_nothing_twice() {
    assertThat(history(weak().redone("screws-pulled-out-in-sequence")).triedTwice()).isEmpty();
  }

  @Test
  void a_nail_for_a_nail_in_a_tibia_is_told_what_was_published_with_its_caution() {
    assertThat(history(CaseText.nailed().redone("nail-broken-at-bolt-hole")).prognosis())
        .hasValueSatisfying(
            line ->
                assertThat(line)
                    .contains("63 % of tibiae", "not a forecast", "Source:", "excerpt read"));
  }

  @Test
  void where_nothing_published_fits_nothing_is_said() {
    assertThat(history(weak().redone("screws-pulled-out-in-sequence")).prognosis()).isEmpty();
  }

  @Test
  void a_first_operation_has_no_history() {
    History history = history(CaseText.plated());
    assertThat(history.triedTwice()).isEmpty();
    assertThat(history.prognosis()).isEmpty();
  }
}
