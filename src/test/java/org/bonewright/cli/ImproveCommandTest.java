package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ImproveCommandTest {

  private static final String FEMUR = "cases/demo/femur-three-operations/case.json";
  private static final String CLAVICLE = "cases/demo/clavicle-sound-plate-weak-host/case.json";

  @Test
  void a_plan_that_can_be_mended_leaves_with_zero() {
    Answer answer = Answer.run("improve", FEMUR);

    assertThat(answer.code()).isZero();
    assertThat(answer.out()).contains("FOUND: with 1 step", "five deep samples");
    assertThat(answer.err()).isEmpty();
  }

  @Test
  void a_plan_that_cannot_leaves_with_one_and_says_why() {
    Answer answer = Answer.run("improve", CLAVICLE);

    assertThat(answer.code()).isEqualTo(1);
    assertThat(answer.out()).contains("NONE FOUND", "why it stays: The patient is treated");
  }

  @Test
  void a_site_file_brings_its_limits_and_its_shelf() {
    Answer answer = Answer.run("improve", FEMUR, "--site", "sites/example.json");

    assertThat(answer.code()).isZero();
    assertThat(answer.out())
        .contains(
            "Screws reach through the far cortex (major)", "usual sizes", "site example-district");
    assertThat(Answer.run("improve", FEMUR, "--site", "sites/shelf-example.json").out())
        .contains("new implants from: example-small-hospital")
        .contains(
            "NOT ON THIS SHELF: plan-a/stage-1: plate-1, 12-hole large fragment broad locking");
  }

  @Test
  void the_shelf_of_a_site_file_is_shown_by_the_command_that_checks_it() {
    Answer answer = Answer.run("site", "sites/shelf-example.json");

    assertThat(answer.code()).isZero();
    assertThat(answer.out())
        .contains("large fragment broad, steel cold worked: 8, 10, 12 holes", "tension device no");
  }

  @Test
  void json_goes_whole_to_a_file(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("options.json");
    Answer answer = Answer.run("improve", FEMUR, "--format", "json", "--output", file.toString());

    assertThat(answer.code()).isZero();
    assertThat(answer.out()).isEmpty();
    assertThat(Files.readString(file)).startsWith("{").contains("bonewright/improvement/1");
  }

  @Test
  void a_plan_that_is_not_there_is_refused_with_those_that_are() {
    Answer answer = Answer.run("improve", FEMUR, "--plan", "plan-z");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("There is no plan plan-z", "It has: plan-a.");
  }

  @Test
  void a_case_without_a_plan_is_refused() {
    Answer answer = Answer.run("improve", "cases/bases/tibia-bridging-plate-fresh.json");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("no plan with a stage");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3", "5001", "many"})
  void a_number_of_tries_that_is_none_is_refused(String tries) {
    Answer answer = Answer.run("improve", FEMUR, "--tries", tries);

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("--tries", tries);
  }

  @Test
  void an_unusable_case_or_site_lists_its_problems(@TempDir Path folder) throws IOException {
    Path broken = folder.resolve("case.json");
    Files.writeString(broken, Files.readString(Path.of(FEMUR)).replace("\"left\"", "\"lefft\""));
    assertThat(Answer.run("improve", broken.toString()).code()).isEqualTo(2);
    assertThat(Answer.run("improve", broken.toString()).err()).contains("/bone/side");
    assertThat(Answer.run("improve", FEMUR, "--site", CLAVICLE).code()).isEqualTo(2);
  }

  @Test
  void help_says_what_the_exit_codes_mean() {
    assertThat(Answer.run("improve", "--help").out().replaceAll("\\s+", " "))
        .contains("Options to discuss, not orders", "none was found; why is told", "--tries");
  }
}
