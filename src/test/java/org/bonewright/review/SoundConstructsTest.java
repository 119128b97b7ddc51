package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Good surgery is left in peace: the textbook-sound constructs of cases/sound. */
class SoundConstructsTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  @TestFactory
  Stream<DynamicTest> nothing_above_a_note_is_unmet_and_nothing_is_open() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cases/sound"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }
  }

  private static void check(Path file) {
    Reading reading = new Intake().read(bytes(file));
    assertThat(reading.problems()).isEmpty();
    Review review = REVIEWER.review(reading.caseFile().orElseThrow());
    List<Chapter> planned = review.chapters().stream().filter(Chapter::planned).toList();
    List<Chapter> judged =
        planned.isEmpty() ? List.of(review.chapters().get(review.chapters().size() - 1)) : planned;

    assertThat(judged.stream().flatMap(SoundConstructsTest::unmet)).isEmpty();
    assertThat(judged).flatExtracting(Chapter::unknown).isEmpty();
    assertThat(judged).flatExtracting(Chapter::met).isNotEmpty();
  }

  private static Stream<String> unmet(Chapter chapter) {
    return Stream.concat(chapter.fits().stream(), chapter.others().stream())
        .flatMap(h -> Stream.concat(Stream.of(h.lead()), h.nested().stream()))
        .filter(line -> !line.severity().equals(Optional.of(Severity.NOTE)))
        .map(Line::principle);
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
