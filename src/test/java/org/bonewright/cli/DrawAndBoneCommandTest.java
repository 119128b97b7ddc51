package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawAndBoneCommandTest {

  private static final String DEMO = "cases/demo/femur-three-operations/case.json";
  private static final String FRESH = "cases/sound/femur-bridging-plate-fresh.json";

  @Test
  void draw_shows_the_chosen_plan_from_the_side() {
    Answer answer = Answer.run("draw", DEMO);

    assertThat(answer.code()).isZero();
    assertThat(answer.err()).isEmpty();
    assertThat(answer.out())
        .startsWith("<?xml")
        .contains("Side strip of plan-a: left femur")
        .contains("invented case")
        .contains("Not to be used for measuring")
        .endsWith("</svg>\n");
  }

  @Test
  void draw_shows_the_last_operation_where_no_plan_is_chosen() {
    assertThat(Answer.run("draw", FRESH).out()).contains("Side strip of op-1: right femur");
  }

  @Test
  void draw_shows_what_is_named_in_the_view_that_is_named() {
    assertThat(Answer.run("draw", DEMO, "--on", "op-3", "--view", "map").out())
        .contains("Cortex map of op-3");
    assertThat(Answer.run("draw", DEMO, "--on", "plan-a/stage-1").out())
        .contains("Side strip of plan-a/stage-1");
  }

  @Test
  void draw_goes_to_a_file(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("x.svg");

    Answer answer = Answer.run("draw", DEMO, "--output", file.toString());

    assertThat(answer.out()).isEmpty();
    assertThat(Files.readString(file)).isEqualTo(Answer.run("draw", DEMO).out());
  }

  @Test
  void draw_reads_standard_input() throws IOException {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(Files.readAllBytes(Path.of(DEMO))));
      assertThat(Answer.run("draw", "-").out()).isEqualTo(Answer.run("draw", DEMO).out());
    } finally {
      System.setIn(before);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"draw --on", "bone --before"})
  void an_unknown_name_gets_those_that_there_are(String command) {
    String[] words = command.split(" ", -1);

    Answer answer = Answer.run(words[0], DEMO, words[1], "op-9");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.out()).isEmpty();
    assertThat(answer.err())
        .isEqualTo(
            "There is no op-9 in this case. It has: op-1, op-2, op-3, plan-a/stage-1, plan-a.\n");
  }

  @Test
  void a_case_without_operation_and_plan_has_nothing_to_draw(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("case.json");
    Files.writeString(
        file,
        """
        {"schema": "bonewright/case/1", "reference": "r", "provenance": "invented",
         "patient": {}, "bone": {"name": "tibia", "side": "left"}, "injury": {}}
        """);

    Answer answer = Answer.run("draw", file.toString());

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("no operation and no plan: there is nothing to draw");
    assertThat(Answer.run("bone", file.toString()).code()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"draw", "bone"})
  void help_has_examples(String command) {
    assertThat(Answer.run(command, "--help").out())
        .contains("bonewright " + command + " case.json");
  }

  @Test
  void a_word_that_is_no_view_is_refused() {
    Answer answer = Answer.run("draw", DEMO, "--view", "front");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("front");
  }

  @Test
  void bone_tells_what_an_operation_found() {
    Answer answer = Answer.run("bone", DEMO, "--before", "op-3");

    assertThat(answer.code()).isZero();
    assertThat(answer.out().lines()).allMatch(line -> line.length() <= 96);
    assertThat(answer.out())
        .contains("before op-3")
        .contains("op-2/plate-1: plate of 8 holes, lateral, hole 1 at 217 mm")
        .contains("op-1/plate-1: hole 1 at 209 mm")
        .doesNotContain("nail");
  }

  @Test
  void bone_tells_where_three_screws_find_fresh_bone() {
    // Screws of 5 mm against tracks of 4.5: 5 + 4.75 = 9.75 mm; the nearest lateral tracks are at
    // 209 and 329 mm: free to 199.25 and from 338.75, in steps of half a millimetre 199 and 339.
    // The zone ends at 266: from 268.5 on the anterior surface, whole millimetres 269.
    assertThat(Answer.run("bone", DEMO, "--before", "op-3").out())
        .contains("  lateral: 3–199, 339–422 mm free")
        .contains("  anterior: 3–261, 269–422 mm free");
  }

  @Test
  void bone_is_as_it_is_now_where_nothing_is_named() {
    assertThat(Answer.run("bone", DEMO).out())
        .contains("op-3/nail-1: nail 9 mm thick, 320 mm long, bolts at 30, 48, 305 mm")
        .contains("op-2/plate-1: hole 1 at 217 mm");
  }

  @Test
  void bone_as_json_says_the_same_each_time() {
    String json = Answer.run("bone", DEMO, "--format", "json").out();

    assertThat(json)
        .startsWith("{")
        .contains("\"schema\" : \"bonewright/bone/1\"")
        .isEqualTo(Answer.run("bone", DEMO, "--format", "json").out());
  }
}
