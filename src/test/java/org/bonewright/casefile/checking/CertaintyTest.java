package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.json.JsonNumber;
import jakarta.json.JsonValue;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bonewright.casefile.reading.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is left out or made less exact, the checks stay calm. */
class CertaintyTest {

  private record Leaf(String pointer, JsonValue value) {}

  static Stream<Altered> sound() {
    return Stream.of(Altered.minimal(), Altered.plateHistory(), Altered.nailAndFixator());
  }

  static Stream<Altered> readable() {
    Stream<Altered> broken =
        BrokenFiles.read().all().stream()
            .filter(file -> file.refused().isBehindReading())
            .map(file -> Altered.of(file.bytes()));
    return Stream.concat(sound(), broken);
  }

  @ParameterizedTest
  @MethodSource("sound")
  void objects_to_nothing_when_a_number_becomes_a_range(Altered file) {
    numbers(file)
        .flatMap(number -> widened(file, number).stream())
        .forEach(wider -> assertThat(wider).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("readable")
  void objects_to_nothing_more_when_a_number_beside_becomes_a_range(Altered file) {
    List<Problem> exact = file.problems();
    numbers(file)
        .filter(number -> exact.stream().anyMatch(problem -> isBeside(number, problem)))
        .flatMap(number -> widened(file, number).stream())
        .forEach(
            wider -> {
              assertThat(pointers(exact)).containsAll(pointers(wider));
              assertThat(pointers(errors(exact))).containsAll(pointers(errors(wider)));
            });
  }

  private static Stream<Leaf> numbers(Altered file) {
    return parts("", file.json()).filter(part -> part.value() instanceof JsonNumber);
  }

  private static Optional<List<Problem>> widened(Altered file, Leaf number) {
    return file.replacing(number.pointer(), around((JsonNumber) number.value())).ifReadable();
  }

  private static boolean isBeside(Leaf leaf, Problem problem) {
    String above = problem.pointer().substring(0, problem.pointer().lastIndexOf('/'));
    return !above.isEmpty() && leaf.pointer().startsWith(above);
  }

  private static List<Problem> errors(List<Problem> problems) {
    return problems.stream().filter(Problem::isError).toList();
  }

  private static List<String> pointers(List<Problem> problems) {
    return problems.stream().map(problem -> problem.pointer()).toList();
  }

  @ParameterizedTest
  @MethodSource("sound")
  void answers_in_plain_words_whatever_is_left_out(Altered file) {
    parts("", file.json())
        .filter(part -> !part.pointer().isEmpty())
        .map(part -> file.without(part.pointer()))
        .flatMap(less -> less.ifReadable().stream())
        .flatMap(List::stream)
        .forEach(FriendlyWords::assertFriendly);
  }

  @ParameterizedTest
  @MethodSource("readable")
  void points_at_what_is_there_or_at_a_field_that_could_be(Altered file) {
    for (Problem problem : file.problems()) {
      int last = problem.pointer().lastIndexOf('/');
      String above = problem.pointer().substring(0, last);
      assertThat(parts("", file.json()).map(Leaf::pointer)).contains(above);
    }
  }

  private static String around(JsonNumber number) {
    double value = number.doubleValue();
    double share = Math.abs(value) / 20;
    return "{\"min\": " + (value - share) + ", \"max\": " + (value + share) + "}";
  }

  /** Return everything below a value, itself first. */
  private static Stream<Leaf> parts(String at, JsonValue value) {
    Stream<Leaf> below =
        switch (value.getValueType()) {
          case OBJECT ->
              value.asJsonObject().entrySet().stream()
                  .flatMap(field -> parts(at + "/" + field.getKey(), field.getValue()));
          case ARRAY ->
              IntStream.range(0, value.asJsonArray().size())
                  .boxed()
                  .flatMap(i -> parts(at + "/" + i, value.asJsonArray().get(i)));
          default -> Stream.empty();
        };
    return Stream.concat(Stream.of(new Leaf(at, value)), below);
  }
}
