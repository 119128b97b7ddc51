package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharedOptionsTest {

  private static final String BENCH = "cases/bench/locking-plate-open-gap.json";
  private static final String CASE = "cases/bases/tibia-bridging-plate-fresh.json";

  @ParameterizedTest
  @ValueSource(strings = {"bone", "explain", "improve", "mechanics"})
  void a_command_that_shows_text_or_json_says_so_when_another_format_is_named(String command) {
    Answer answer = Answer.run(command, "any.json", "any", "--format", "xml");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err())
        .contains("expected text or json, but was 'xml'", "See: bonewright " + command + " --help");
  }

  @Test
  void a_format_may_be_written_in_capitals() {
    assertThat(Answer.run("mechanics", BENCH, "--format", "JSON").out())
        .isEqualTo(Answer.run("mechanics", BENCH, "--format", "json").out())
        .startsWith("{");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bone", "draw", "review"})
  void an_answer_is_not_written_to_a_folder(String command, @TempDir Path folder) {
    Answer answer = Answer.run(command, CASE, "--output", folder.toString());

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains(folder + " is a folder; name a file.");
    assertThat(answer.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"review", "explain", "improve", "principles", "serve"})
  void every_command_that_judges_takes_a_site_file(String command) {
    assertThat(Answer.run(command, "--help").out())
        .contains("--site=FILE", "Judge by the local limits and severities of this");
  }

  @ParameterizedTest
  @ValueSource(strings = {"review", "bone", "draw"})
  void what_is_worth_a_second_look_is_told_beside_the_answer(String command) {
    String warned = "cases/faults/clavicle-called-united-too-soon.json";
    String checked = Answer.run("check", warned).out();

    String told = Answer.run(command, warned).err();

    assertThat(told).isNotBlank();
    assertThat(checked).startsWith(told + "The file is usable;");
  }
}
