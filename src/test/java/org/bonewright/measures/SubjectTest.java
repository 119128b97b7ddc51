package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SubjectTest {

  private static final CaseText TEXT =
      CaseText.bare()
          .with(
              """
              {operations: [{id: 'op-1', day: 10}, {id: 'op-2', day: 100}],
               findings: [{day: 0, pain: 1}, {day: 50, pain: 5}, {day: 100, pain: 6},
                 {day: 150, pain: 8}],
               plans: [{id: 'plan-a', stages: [{id: 'stage-1'}, {id: 'stage-2'}]},
                 {id: 'plan-b', stages: []}]}
              """);

  private static Subject subject(CaseText text, String id) {
    return Taken.subject(text.file(), id);
  }

  private static List<Double> painKnownTo(CaseText text, String id) {
    return subject(text, id).findings().stream()
        .map(Finding::pain)
        .map(pain -> pain.orElseThrow().min())
        .toList();
  }

  @Test
  void are_the_operations_then_each_plan_with_its_stages_first() {
    assertThat(Subject.of(TEXT.file()))
        .extracting(Subject::id)
        .containsExactly("op-1", "op-2", "plan-a/stage-1", "plan-a/stage-2", "plan-a");
  }

  @Test
  void a_stage_comes_after_every_operation_and_the_stages_before_it() {
    assertThat(subject(TEXT, "plan-a/stage-2").before())
        .extracting(operation -> operation.id())
        .containsExactly("op-1", "op-2", "stage-1");
    assertThat(subject(TEXT, "plan-a").before())
        .extracting(operation -> operation.id())
        .containsExactly("op-1", "op-2");
  }

  @Test
  void a_plan_is_told_by_its_last_stage() {
    assertThat(subject(TEXT, "plan-a").operation().id()).isEqualTo("stage-2");
    assertThat(subject(TEXT, "plan-a").path(subject(TEXT, "plan-a").operation()))
        .isEqualTo("plan-a/stage-2");
  }

  @Test
  void the_case_ends_with_its_plan_or_without_one_with_its_last_operation() {
    assertThat(Subject.of(TEXT.file()))
        .filteredOn(Subject::closesTheCase)
        .extracting(Subject::id)
        .containsExactly("plan-a");
    assertThat(Subject.of(TEXT.with("{plans: []}").file()))
        .filteredOn(Subject::closesTheCase)
        .extracting(Subject::id)
        .containsExactly("op-2");
  }

  @Test
  void a_plan_without_stages_does_not_keep_the_last_operation_from_ending_the_case() {
    assertThat(
            Subject.of(TEXT.with("{plans: [{id: 'plan-b', stages: []}]}").file()).stream()
                .filter(Subject::closesTheCase))
        .extracting(Subject::id)
        .containsExactly("op-2");
  }

  @Test
  void a_stage_and_a_plan_know_their_plan_and_an_operation_has_none() {
    CaseText two =
        TEXT.with(
            "{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}, {id: 'plan-b', stages: [{id:"
                + " 'stage-1'}]}]}");
    assertThat(subject(two, "plan-b/stage-1").plan().orElseThrow().id()).isEqualTo("plan-b");
    assertThat(subject(two, "plan-b").plan().orElseThrow().id()).isEqualTo("plan-b");
    assertThat(subject(two, "op-1").plan()).isEmpty();
    assertThat(Subject.now(two.file()).plan()).isEmpty();
  }

  @Test
  void an_operation_and_a_stage_are_found_by_their_own_path() {
    assertThat(subject(TEXT, "op-1").path(subject(TEXT, "op-1").operation())).isEqualTo("op-1");
    assertThat(subject(TEXT, "plan-a/stage-1").path(subject(TEXT, "plan-a/stage-1").operation()))
        .isEqualTo("plan-a/stage-1");
  }

  @Test
  void it_is_a_revision_where_an_earlier_operation_put_metal_in_or_may_have() {
    CaseText text =
        TEXT.with("{operations: [{id: 'op-1', fixation: []}, {id: 'op-2', fixation: []}]}");
    assertThat(subject(text, "op-1").isRevision()).isFalse();
    assertThat(subject(text, "op-2").isRevision()).isFalse();
    assertThat(subject(text.at("/operations/0", "{fixation: null}"), "op-2").isRevision()).isTrue();
    assertThat(
            subject(text.at("/operations/0", "{fixation: [{id: 'n', kind: 'nail'}]}"), "op-2")
                .isRevision())
        .isTrue();
  }

  @Test
  void the_state_of_metal_is_known_from_its_day_on_and_without_one_always() {
    Optional<Quantity> seen = Optional.of(Quantity.of(100));
    assertThat(subject(TEXT, "op-1").knowsState(seen)).isFalse();
    assertThat(subject(TEXT, "op-2").knowsState(seen)).isTrue();
    assertThat(subject(TEXT, "plan-a").knowsState(Optional.of(Quantity.of(500)))).isTrue();
    assertThat(subject(TEXT, "op-1").knowsState(Optional.empty())).isTrue();
    assertThat(subject(TEXT.at("/operations/0", "{day: null}"), "op-1").knowsState(seen)).isTrue();
  }

  @Nested
  class A_moment {

    private static List<Double> painKnownTo(Subject moment) {
      return moment.findings().stream().map(f -> f.pain().orElseThrow().min()).toList();
    }

    @Test
    void now_comes_after_every_operation_and_knows_all_that_was_found() {
      Subject now = Subject.now(TEXT.file());

      assertThat(now.before()).extracting(o -> o.id()).containsExactly("op-1", "op-2");
      assertThat(painKnownTo(now)).containsExactly(8.0, 6.0, 5.0, 1.0);
    }

    @Test
    void before_an_operation_knows_what_that_operation_knew() {
      Subject moment = subject(TEXT, "op-2").justBefore();

      assertThat(moment.before()).extracting(o -> o.id()).containsExactly("op-1");
      assertThat(painKnownTo(moment)).containsExactly(6.0, 5.0, 1.0);
    }

    @Test
    void puts_nothing_in_and_takes_nothing_out() {
      Subject moment = subject(CaseText.plated().redone("plate-bent"), "plan-a").justBefore();

      assertThat(new Scene(moment, Taken.CATALOGUE).construct().implants())
          .extracting(held -> held.path())
          .containsExactly("op-1/plate-1");
    }
  }

  @Nested
  class Findings {

    @Test
    void are_those_up_to_the_day_of_the_operation_the_latest_first() {
      assertThat(painKnownTo(TEXT, "op-1")).containsExactly(1.0);
      assertThat(painKnownTo(TEXT, "op-2")).containsExactly(6.0, 5.0, 1.0);
    }

    @Test
    void are_all_of_them_for_a_plan() {
      assertThat(painKnownTo(TEXT, "plan-a")).containsExactly(8.0, 6.0, 5.0, 1.0);
    }

    @Test
    void of_an_operation_without_a_day_are_those_up_to_the_one_before() {
      CaseText undated = TEXT.at("/operations/1", "{day: null}");
      CaseText early = undated.with("{findings: [{day: 0, pain: 1}, {day: 5, pain: 3}]}");
      assertThat(painKnownTo(early, "op-2")).containsExactly(3.0, 1.0);
      assertThat(painKnownTo(undated, "op-2")).containsExactly(1.0);
      assertThat(painKnownTo(undated.at("/operations/0", "{day: null}"), "op-1"))
          .containsExactly(1.0);
    }
  }
}
