package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds what is shown of each demo against the copy under src/test/resources/golden. After a change
 * that is meant, run with {@code -Dbless=true} and read the difference before it is committed. The
 * content hash of the rules is masked.
 */
class GoldenReportTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  private record Shown(String ending, Function<Review, String> renderer) {}

  private static final List<Shown> RENDERERS =
      List.of(
          new Shown(".txt", new TextReport(false)::render),
          new Shown(".verbose.txt", new TextReport(true)::render),
          new Shown(".json", new JsonReport()::render));

  @TestFactory
  Stream<DynamicTest> every_demo_is_shown_as_it_was() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases/demo"))) {
      List<Path> demos = folders.filter(Files::isDirectory).sorted().toList();
      return demos.stream().flatMap(GoldenReportTest::tests);
    }
  }

  private static Stream<DynamicTest> tests(Path demo) {
    Review review = review(demo.resolve("case.json"));
    return RENDERERS.stream()
        .map(
            shown -> {
              String name = demo.getFileName() + shown.ending();
              return DynamicTest.dynamicTest(
                  name,
                  () ->
                      compare(
                          GOLDEN.resolve(name), masked(review, shown.renderer().apply(review))));
            });
  }

  private static Review review(Path file) {
    try {
      return REVIEWER.review(new Intake().read(Files.readAllBytes(file)).caseFile().orElseThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String masked(Review review, String text) {
    return text.replace(review.versions().hash(), "============");
  }

  private static void compare(Path golden, String text) throws IOException {
    if (Boolean.getBoolean("bless")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, text);
    }
    assertThat(text).isEqualTo(Files.readString(golden));
  }
}
