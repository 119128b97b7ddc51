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
}
