package org.bonewright.casefile.checking;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.reading.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ValidFilesTest {

  private static final Path CASES = Path.of("cases");

  @ParameterizedTest
  @ValueSource(strings = {"minimal", "plate-history", "nail-and-fixator"})
  void leaves_a_sound_file_in_peace(String name) {
    assertThat(Altered.valid(name).problems()).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> refuses_no_case_of_the_collection() throws IOException {
    return cases().map(path -> test(path, List.of(Problem.Severity.ERROR)));
  }

  @TestFactory
  Stream<DynamicTest> warns_of_nothing_in_the_sound_constructs_and_bases() throws IOException {
    return cases()
        .filter(
            path ->
                path.startsWith(CASES.resolve("sound")) || path.startsWith(CASES.resolve("bases")))
        .map(path -> test(path, List.of(Problem.Severity.values())));
  }

  private static DynamicTest test(Path path, List<Problem.Severity> unwanted) {
    return DynamicTest.dynamicTest(
        path.toString(),
        () ->
            assertThat(Altered.of(Files.readAllBytes(path)).problems())
                .filteredOn(problem -> unwanted.contains(problem.severity()))
                .isEmpty());
  }

  private static Stream<Path> cases() throws IOException {
    try (Stream<Path> files = Files.walk(CASES)) {
      return files.filter(ValidFilesTest::isCase).sorted().toList().stream();
    }
  }

  private static boolean isCase(Path path) {
    try {
      return path.toString().endsWith(".json")
          && Files.readString(path, UTF_8).contains("\"bonewright/case/");
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    }
  }
}
