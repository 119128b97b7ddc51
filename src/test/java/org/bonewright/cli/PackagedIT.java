package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar and the start script as a user has them, each in a process of its own. */
class PackagedIT {

  private static final String DEMO = "cases/demo/femur-three-operations/case.json";
  private static final String JAR = System.getProperty("bonewright.jar", "target/bonewright.jar");
  private static final String HOME = System.getProperty("bonewright.home", "target/bonewright");

  @TempDir private Path folder;

  private record Answer(int code, String out, String err) {}

  private Answer run(Path input, String... command) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(command)
            .redirectInput(input.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return new Answer(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private Answer jar(Path input, String... args) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR));
    command.addAll(List.of(args));
    return run(input, command.toArray(String[]::new));
  }

  private Path nothing() throws IOException {
    Path file = folder.resolve("nothing");
    Files.write(file, new byte[0]);
    return file;
  }

  @Test
  void the_jar_reviews_the_demo() throws IOException, InterruptedException {
    Answer answer = jar(nothing(), "review", DEMO);

    assertThat(answer.code()).isEqualTo(1);
    assertThat(answer.out()).contains("MUST ACHIEVE");
    assertThat(answer.err()).isEmpty();
  }

  @Test
  void the_jar_reads_standard_input() throws IOException, InterruptedException {
    assertThat(jar(Path.of(DEMO), "review", "-").out())
        .isEqualTo(jar(nothing(), "review", DEMO).out());
  }

  @Test
  void the_jar_refuses_a_broken_file_without_a_stack_trace()
      throws IOException, InterruptedException {
    Answer answer = jar(Path.of("pom.xml"), "review", "-");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.out()).isEmpty();
    assertThat(answer.err()).contains("Standard input cannot be used").doesNotContain("\tat ");
  }

  @Test
  void the_script_gives_the_same_answer_with_and_without_its_archive()
      throws IOException, InterruptedException {
    String script = Path.of(HOME, "bin", "bonewright").toString();

    Answer first = run(nothing(), "sh", script, "review", DEMO);
    Answer second = run(nothing(), "sh", script, "review", DEMO);

    assertThat(first.code()).isEqualTo(1);
    assertThat(first.out()).isEqualTo(jar(nothing(), "review", DEMO).out());
    assertThat(second).isEqualTo(first);
  }
}
