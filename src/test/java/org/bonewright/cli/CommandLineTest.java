package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

  private static final String DEMO = "cases/demo/femur-three-operations/case.json";
  private static final String SOUND = "cases/bases/tibia-bridging-plate-fresh.json";

  record Answer(int code, String out, String err) {}

  /** Run a command as main does. */
  static Answer run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            args,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Answer(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Nested
  class A_review {

    @Test
    void of_the_demo_fits_a_screen_of_eighty_lines_and_leaves_with_one() {
      Answer answer = run("review", DEMO);

      assertThat(answer.code()).isEqualTo(1);
      assertThat(answer.out().lines().count()).isLessThanOrEqualTo(80);
      assertThat(answer.out().lines()).allMatch(line -> line.length() <= 96);
      assertThat(answer.err()).isEmpty();
    }

    @Test
    void of_a_case_told_in_the_minimum_set_fits_a_screen_and_asks_seven_questions_at_most() {
      String told = run("review", "cases/demo/tibia-minimum-set/case.json").out();

      assertThat(told.lines().count()).isLessThanOrEqualTo(80);
      assertThat(told).contains("\n  7 ").doesNotContain("\n  8 ");
    }

    @Test
    void does_not_say_that_nothing_explains_a_failure_while_much_is_open() {
      assertThat(run("review", "cases/published/femur-plate-and-cerclage/case.json").out())
          .contains("No grave technical reason for certain; what is open below may be one.")
          .doesNotContain("No grave technical reason found");
    }

    @Test
    void of_a_case_without_a_plan_leaves_with_zero() {
      assertThat(run("review", SOUND).code()).isZero();
    }

    @Test
    void in_a_format_that_is_not_there_names_the_formats_as_help_does() {
      Answer answer = run("review", DEMO, "--format", "xml");

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("expected text, json or html, but was 'xml'");
    }

    @Test
    void gives_the_same_bytes_each_time() {
      assertThat(run("review", DEMO, "--format", "json").out())
          .isEqualTo(run("review", DEMO, "--format", "json").out())
          .startsWith("{")
          .endsWith("}\n");
    }

    @Test
    void goes_whole_to_a_file(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("review.txt");

      Answer answer = run("review", DEMO, "--output", file.toString());

      assertThat(answer.out()).isEmpty();
      assertThat(Files.readString(file)).isEqualTo(run("review", DEMO).out());
      try (Stream<Path> left = Files.list(folder)) {
        assertThat(left).containsExactly(file);
      }
    }

    @Test
    void says_when_the_file_cannot_be_written() {
      Answer answer = run("review", DEMO, "--output", "/no/such/folder/review.txt");

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("/no/such/folder/review.txt cannot be written");
    }

    @Test
    void shows_the_arithmetic_when_asked() {
      assertThat(run("review", DEMO, "--verbose").out())
          .contains("plate 128 mm / zone 29 mm = 4.41")
          .contains("met if Span ratio were");
    }
  }

  @Nested
  class Bad_input {

    @Test
    void lists_every_problem_and_leaves_with_two(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("case.json");
      Files.writeString(
          file,
          Files.readString(Path.of(SOUND))
              .replaceFirst("\"side\": \"[a-z]+\"", "\"side\": \"middle\"")
              .replaceFirst("\"sex\": \"[a-z]+\"", "\"sexe\": \"male\""));

      Answer answer = run("review", file.toString());

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.out()).isEmpty();
      assertThat(answer.err())
          .contains("2 errors")
          .contains("/bone/side")
          .contains("left, right")
          .contains("/patient/sexe")
          .contains("\"sex\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-file.json", "cases", ""})
    void names_a_file_that_cannot_be_read(String name) {
      Answer answer = run("review", name);

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("cannot be").doesNotContain("Exception");
    }

    @Test
    void explains_a_wrong_option() {
      Answer answer = run("review", DEMO, "--fromat", "json");

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("--fromat").contains("bonewright review --help");
    }

    @Test
    void names_an_unknown_principle() {
      Answer answer = run("principles", "no-such-thing");

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("no principle no-such-thing");
    }
  }

  @Nested
  class Local_limits {

    private static final String SITE = "sites/example.json";

    @Test
    void are_shown_beside_the_published_ones() {
      Answer answer = run("review", DEMO, "--site", SITE);

      assertThat(answer.code()).isEqualTo(1);
      assertThat(answer.out())
          .contains("LOCAL LIMITS", "example-district-hospital (invented site)");
      assertThat(answer.out().lines()).allMatch(line -> line.length() <= 96);
    }

    @Test
    void are_checked_by_a_command() {
      assertThat(run("site", SITE).out())
          .startsWith("The file is usable.")
          .contains("3 here, published 5");
    }

    @Test
    void that_are_faulty_are_listed_and_nothing_is_reviewed(@TempDir Path folder)
        throws IOException {
      Path file = folder.resolve("site.json");
      Files.writeString(
          file,
          Files.readString(Path.of(SITE))
              .replace("plate-span-ratio", "plate-span-rato")
              .replace("\"2026-01-15\"", "\"2026-13-15\""));
      for (String[] args :
          new String[][] {
            {"review", DEMO, "--site", file.toString()},
            {"principles", "--site", file.toString()},
            {"serve", "--port", "0", "--site", file.toString()},
            {"site", file.toString()}
          }) {
        Answer answer = run(args);
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err())
            .contains("2 errors", "/limits/0/principle", "/limits/1/on", "bonewright schema site");
      }
    }

    @Test
    void stand_in_the_list_of_principles() {
      assertThat(run("principles", "five-deep-samples", "--site", SITE).out())
          .contains("five of samples: 5 (one large cohort")
          .contains("Set by this site", "3 here, published 5")
          .contains("In the profiles: default, exam.");
      assertThat(run("principles", "infection-needs-stability").out())
          .contains("No site may change it");
    }

    @Test
    void have_a_schema() {
      assertThat(run("schema", "site").out()).contains("https://bonewright.org/schema/site/1");
    }
  }

  @Nested
  class A_profile {

    @Test
    void narrows_what_is_shown_and_says_so() {
      Answer answer = run("review", DEMO, "--profile", "exam");

      assertThat(answer.code()).isEqualTo(run("review", DEMO).code());
      assertThat(answer.out().replaceAll("\\s+", " "))
          .contains("profile exam", "The profile exam leaves out");
      assertThat(run("principles", "--profile", "exam").out())
          .startsWith("Profile exam: ")
          .doesNotContain("hole-map-complete")
          .contains("five-deep-samples");
    }

    @Test
    void that_does_not_exist_is_refused_with_those_that_do() {
      Answer answer = run("review", DEMO, "--profile", "night");

      assertThat(answer.code()).isEqualTo(2);
      assertThat(answer.err()).contains("no profile night", "default, exam");
    }
  }

  @Nested
  class Other_commands {

    @Test
    void check_says_that_a_file_is_usable() {
      assertThat(run("check", SOUND).out()).contains("usable");
    }

    @Test
    void check_lists_what_the_minimum_set_lacks(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("sparse.json");
      Files.writeString(
          file,
          "{\"schema\": \"bonewright/case/1\", \"reference\": \"sparse\","
              + " \"provenance\": \"invented\", \"patient\": {}, \"bone\": {\"name\": \"ulna\","
              + " \"side\": \"left\"}, \"injury\": {}}");

      assertThat(run("check", file.toString(), "--todo").out())
          .contains("/patient/ageYears")
          .contains("/injury/pattern")
          .contains("/findings/0/infection/crpMgL");
    }

    @Test
    void check_todo_asks_which_of_two_modes_it_was(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("broken.json");
      Files.writeString(file, CaseText.plated().redone("plate-broken").tree().toString());

      assertThat(run("check", file.toString(), "--todo").out())
          .contains("/operations/0/outcome/mode")
          .contains("Which was it: plate-broken-at-empty-hole or plate-broken-at-filled-hole?");
    }

    @Test
    void principles_lists_each_principle_once() {
      String list = run("principles").out();

      assertThat(list.lines().filter(line -> line.contains("plate-span-ratio"))).hasSize(1);
    }

    @Test
    void principles_shows_one_with_limits_and_sources() {
      assertThat(run("principles", "nail-diameter-fits-isthmus").out())
          .contains("Limits")
          .contains("Millar et al.")
          .contains("(from memory)")
          .contains("Reviewed by: nobody yet");
    }

    @Test
    void measures_are_listed_with_formula_and_source() {
      assertThat(run("principles", "--measures").out())
          .contains("plate-span-ratio - Span ratio")
          .contains("plate length divided by zone length")
          .contains("failed-principles-cured");
    }

    @Test
    void schema_is_a_json_schema() {
      assertThat(run("schema").out()).contains("https://json-schema.org/draft/2020-12/schema");
    }

    @Test
    void warm_up_works_without_a_word() {
      Answer answer = run("warm-up");

      assertThat(answer.code()).isZero();
      assertThat(answer.out()).isEmpty();
    }

    static Stream<String> commands() {
      return Stream.of("review", "check", "principles", "schema", "site");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help_has_examples(String command) {
      Answer answer = run(command, "--help");

      assertThat(answer.code()).isZero();
      assertThat(answer.out()).contains("Example").contains("bonewright " + command);
    }

    @Test
    void without_a_command_the_usage_is_shown() {
      assertThat(run().out()).contains("Examples:").contains("does not replace clinical");
    }
  }
}
