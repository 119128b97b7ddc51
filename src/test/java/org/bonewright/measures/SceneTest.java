package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

class SceneTest {

  private static Scene scene(CaseText text, String subject) {
    return new Scene(Taken.subject(text.file(), subject), Taken.CATALOGUE);
  }

  @Test
  void takes_a_measure_once() {
    Scene scene = scene(CaseText.plated(), "op-1");
    assertThat(scene.read("plate-length")).isSameAs(scene.read("plate-length"));
  }

  @Test
  void refuses_a_measure_that_there_is_not() {
    Scene scene = scene(CaseText.plated(), "op-1");
    assertThatThrownBy(() -> scene.read("no-such-measure"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no-such-measure");
  }

  @Test
  void a_word_is_certain_when_it_is_the_only_one_and_possible_when_nothing_is_known() {
    Scene plated = scene(CaseText.plated(), "op-1");
    assertThat(plated.certainly("plate-used", "yes")).isTrue();
    assertThat(plated.possibly("plate-used", "no")).isFalse();
    Scene bare = scene(CaseText.bare(), "op-1");
    assertThat(bare.certainly("pattern-class", "simple")).isFalse();
    assertThat(bare.possibly("pattern-class", "simple")).isTrue();
  }

  @Test
  void which_operation_set_the_bone_is_not_known_where_a_later_one_does_not_say_what_it_put_in() {
    CaseText text =
        CaseText.bare()
            .with(
                """
                {operations: [
                  {id: 'op-1', concept: 'absolute', fixation: [{id: 'nail-1', kind: 'nail'}]},
                  {id: 'op-2', concept: 'relative'}]}
                """);
    assertThat(scene(text, "op-1").fixing().concept()).isPresent();
    assertThat(scene(text, "op-2").fixing().concept()).isEmpty();
    assertThat(scene(text.at("/operations/1", "{fixation: []}"), "op-2").fixing().id())
        .isEqualTo("op-1");
    assertThat(scene(text.at("/operations/1", "{reduction: {}}"), "op-2").fixing().concept())
        .isPresent();
  }

  @Test
  void the_failure_answered_to_is_that_of_the_last_operation_meant_to_unite_the_bone() {
    CaseText text =
        CaseText.bare()
            .with(
                """
                {operations: [
                  {id: 'op-1', outcome: {result: 'failed'}},
                  {id: 'op-2', outcome: {result: 'stage-done'}},
                  {id: 'op-3'}],
                 plans: [{id: 'plan-a', stages: [{id: 'stage-1'}, {id: 'stage-2'}]}]}
                """);
    assertThat(scene(text, "op-1").failedBefore()).isEmpty();
    assertThat(scene(text, "op-3").failedBefore().orElseThrow().operation().id()).isEqualTo("op-1");
    assertThat(scene(text, "plan-a/stage-2").failedBefore().orElseThrow().operation().id())
        .isEqualTo("op-3");
  }

  private static final CaseText REDONE = CaseText.plated().redone("plate-bent");

  @Test
  void the_bone_is_set_by_what_is_planned_only_where_the_plan_sets_it() {
    assertThat(scene(REDONE, "plan-a").fixingIsPlanned()).isTrue();
    assertThat(scene(REDONE, "plan-a/stage-1").fixingIsPlanned()).isTrue();
    assertThat(scene(REDONE, "op-1").fixingIsPlanned()).isFalse();
    CaseText kept = REDONE.with("{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}");
    assertThat(scene(kept, "plan-a").fixingIsPlanned()).isFalse();
    assertThat(scene(kept, "plan-a").reduction()).isEqualTo(scene(kept, "op-1").reduction());
    assertThat(scene(kept, "plan-a").reduction()).isPresent();
  }

  @Test
  void a_fact_is_missing_where_it_would_stand_and_asked_in_its_tense() {
    CaseText kept = REDONE.with("{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}");
    assertThat(scene(REDONE, "op-1").missing("day", "When was it?"))
        .isEqualTo(new MissingFact("op-1/day", "When was it?"));
    assertThat(scene(REDONE, "plan-a").missing("day", "When was it?"))
        .isEqualTo(new MissingFact("plan-a/stage-1/day", "When is it?"));
    // of the reduction it is asked where the bone was set, and that is past
    assertThat(scene(kept, "plan-a").missingOfFixing("reduction", "How was it set?"))
        .isEqualTo(new MissingFact("op-1/reduction", "How was it set?"));
    assertThat(scene(REDONE, "plan-a").missingOfFixing("reduction", "How was it set?"))
        .isEqualTo(new MissingFact("plan-a/stage-1/reduction", "How is it set?"));
  }

  @Test
  void the_longest_plate_comes_first_and_a_lag_screw_fills_its_hole_in_one_of_them() {
    String plate =
        "{id: '%s', kind: 'plate', holes: 10, lengthMm: %d, screws: [{at: [1], type: 'cortical'}]}";
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{fixation: ["
                    + plate.formatted("short", 100)
                    + ", "
                    + plate.formatted("long", 160)
                    + ", {id: 'lag-1', kind: 'lag-screw', throughPlate: 'long', hole: 5}]}");
    Scene scene = scene(text, "op-1");
    assertThat(scene.plates()).extracting(p -> p.plate().id()).containsExactly("long", "short");
    assertThat(scene.mainPlate().orElseThrow().isFilled(5)).isTrue();
    assertThat(scene.plates().get(1).isFilled(5)).isFalse();
  }

  @Test
  void a_plate_was_put_in_after_the_operations_before_its_own() {
    Scene again = scene(REDONE, "plan-a");
    assertThat(again.before(again.mainPlate().orElseThrow().plate()))
        .extracting(o -> o.id())
        .containsExactly("op-1");
    Scene kept = scene(REDONE.at("/plans/0/stages/0", "{fixation: [], removed: []}"), "plan-a");
    assertThat(kept.before(kept.mainPlate().orElseThrow().plate())).isEmpty();
  }

  @Test
  void each_screw_of_a_plate_finds_something_in_the_bone_and_an_empty_hole_nothing() {
    Scene scene = scene(REDONE, "plan-a");
    assertThat(scene.bite(scene.mainPlate().orElseThrow().plate(), 3).orElseThrow().track().name())
        .isEqualTo("stage-1/plate-1 hole 3");
    assertThat(scene.bite(scene.mainPlate().orElseThrow().plate(), 2)).isEmpty();
  }

  @Test
  void what_is_only_planned_was_not_done_before() {
    CaseText text =
        REDONE.with("{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}, {id: 'stage-2'}]}]}");
    assertThat(scene(text, "plan-a/stage-2").doneBefore())
        .extracting(o -> o.id())
        .containsExactly("op-1");
  }
}
