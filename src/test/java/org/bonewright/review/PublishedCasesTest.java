package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Holds the review of each published case to what its authors wrote: their reasons come first, and
 * what they ruled out is not brought up. Where the file lists a reason under {@code notReached},
 * the review does not come to it, and the file says why; once it does, the test asks for the line
 * to go.
 */
class PublishedCasesTest {

  private static final int FIRST = 3;
  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  private record Reason(String on, String principle) {}

  @TestFactory
  Stream<DynamicTest> what_the_authors_found() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "published"))) {
      return folders.filter(Files::isDirectory).sorted().toList().stream()
          .flatMap(PublishedCasesTest::of);
    }
  }

  private static Stream<DynamicTest> of(Path folder) {
    JsonNode expected = new YAMLMapper().readTree(read(folder.resolve("expected.yaml")));
    Review review = REVIEWER.review(caseFile(folder.resolve("case.json")));
    List<Reason> notReached = reasons(expected, "notReached");
    List<DynamicTest> tests = new ArrayList<>();
    for (Reason reason : reasons(expected, "authorsFound")) {
      boolean reached = !notReached.contains(reason);
      tests.add(
          dynamicTest(
              folder.getFileName()
                  + ": "
                  + reason.principle()
                  + (reached ? " is among the first reasons" : " is not reached yet"),
              () ->
                  assertThat(firstReasons(review, reason.on()).contains(reason.principle()))
                      .as("first reasons %s", firstReasons(review, reason.on()))
                      .isEqualTo(reached)));
    }
    for (Reason reason : reasons(expected, "authorsDenied")) {
      tests.add(
          dynamicTest(
              folder.getFileName() + ": " + reason.principle() + " is not held against it",
              () -> assertThat(unmet(review, reason.on())).doesNotContain(reason.principle())));
    }
    return tests.stream();
  }

  /** The principles of the first headlines, those that share one with the lead too. */
  private static Set<String> firstReasons(Review review, String on) {
    Chapter chapter = chapter(review, on);
    Set<String> first = new TreeSet<>();
    Stream.concat(chapter.fits().stream(), chapter.others().stream())
        .limit(FIRST)
        .forEach(
            headline -> {
              first.add(headline.lead().principle());
              headline.nested().forEach(line -> first.add(line.principle()));
            });
    return first;
  }

  private static Set<String> unmet(Review review, String on) {
    Chapter chapter = chapter(review, on);
    Set<String> all = new TreeSet<>();
    Stream.concat(chapter.fits().stream(), chapter.others().stream())
        .flatMap(headline -> Stream.concat(Stream.of(headline.lead()), headline.nested().stream()))
        .forEach(line -> all.add(line.principle()));
    return all;
  }

  private static Chapter chapter(Review review, String on) {
    return review.chapters().stream()
        .filter(chapter -> chapter.subject().equals(on))
        .findFirst()
        .orElseThrow();
  }

  private static List<Reason> reasons(JsonNode expected, String list) {
    return expected.path(list).values().stream()
        .map(line -> new Reason(line.path("on").asString(), line.path("principle").asString()))
        .toList();
  }

  private static CaseFile caseFile(Path file) {
    Reading reading = new Intake().read(read(file).getBytes(StandardCharsets.UTF_8));
    assertThat(reading.problems()).isEmpty();
    return reading.caseFile().orElseThrow();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
