package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplainCommandTest {

  private static final String DEMO = "cases/demo/femur-three-operations/case.json";

  @Test
  void tells_readings_limits_rules_and_sources_of_one_verdict() {
    Answer answer = Answer.run("explain", DEMO, "plate-span-ratio", "--on", "op-1");

    assertThat(answer.code()).isZero();
    assertThat(answer.err()).isEmpty();
    assertThat(answer.out())
        .contains("LIMITS THAT HOLD HERE", "THE RULES", "fires", "WHERE IT COMES FROM", "CAUTION")
        .contains("Span ratio below 5")
        .doesNotContain("{", "}");
  }

  @Test
  void tells_the_same_as_json() {
    assertThat(
            Answer.run("explain", DEMO, "plate-span-ratio", "--on", "op-1", "--format", "json")
                .out())
        .startsWith("{")
        .contains("\"subject\" : \"op-1\"");
  }

  @Test
  void says_that_there_is_nothing_to_turn_where_the_principle_is_met() {
    Answer answer = Answer.run("explain", DEMO, "plate-span-ratio", "--on", "plan-a", "--changes");

    assertThat(answer.code()).isZero();
    assertThat(answer.out()).contains("There is nothing to turn: the principle is met");
  }

  @Test
  void names_what_is_like_a_principle_that_does_not_exist() {
    Answer answer = Answer.run("explain", DEMO, "span");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.out()).isEmpty();
    assertThat(answer.err()).contains("no principle span", "plate-span-ratio");
  }

  @Test
  void names_where_a_principle_is_judged_and_what_else_a_case_has() {
    assertThat(Answer.run("explain", DEMO, "plate-span-ratio", "--on", "op-9"))
        .matches(answer -> answer.code() == 2)
        .matches(answer -> answer.err().contains("op-1"));
    assertThat(Answer.run("explain", DEMO, "five-deep-samples", "--on", "op-1").err())
        .contains("not judged on op-1", "op-2", "plan-a");
  }
}
