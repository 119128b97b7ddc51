package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Chapter;
import org.bonewright.review.Headline;
import org.bonewright.review.Line;
import org.bonewright.review.PlanDemands;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds what a reader sees of each demonstration to what was written down for it: the exit code,
 * the red flags, words that must and must not be said, and what comes first. The verdicts
 * themselves are held by the test of expectations beside the principles.
 */
class DemosAsExpectedTest {

  private record Answer(int code, String out) {}

  /** One finding in its place: everything under one headline has the same. */
  private record Placed(
      String principle, Severity severity, int place, boolean fits, boolean leads) {}

  @TestFactory
  Stream<DynamicTest> demos() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "demo"))) {
      List<DynamicTest> tests = new ArrayList<>();
      for (Path folder : folders.sorted().toList()) {
        tests.addAll(demo(folder));
      }
      return tests.stream();
    }
  }

  private static List<DynamicTest> demo(Path folder) throws IOException {
    Path file = folder.resolve("case.json");
    CaseFile caseFile = new Intake().read(Files.readAllBytes(file)).caseFile().orElseThrow();
    Expected expected =
        Expected.read(
            folder.resolve("expected.yaml"),
            caseFile.operations().stream().map(Operation::id).toList(),
            caseFile.plans().stream().map(Plan::id).toList());
    Review review = new Reviewer(RuleSet.built()).review(caseFile);
    List<DynamicTest> tests = new ArrayList<>();
    String name = folder.getFileName() + ": ";
    tests.add(dynamicTest(name + "red flags", () -> redFlags(review, expected)));
    tests.add(dynamicTest(name + "words and exit code", () -> words(file, expected)));
    expected
        .subjects()
        .forEach((id, lists) -> tests.add(dynamicTest(name + id, () -> first(review, id, lists))));
    return tests;
  }

  private static void redFlags(Review review, Expected expected) {
    assertThat(review.redFlags())
        .extracting(flag -> flag.what() + " (" + flag.since() + ")")
        .containsExactlyElementsOf(expected.redFlags());
  }

  private static void words(Path file, Expected expected) {
    Answer brief = review(file);
    Answer full = review(file, "--verbose");
    String page = review(file, "--format", "html").out().replaceAll("(?s)<style>.*?</style>", "");
    assertThat(brief.code()).as("exit").isEqualTo(expected.exit());
    assertThat(expected.mustSay()).isNotEmpty();
    for (String words : expected.mustSay()) {
      assertThat(List.of(brief.out(), full.out(), page)).as(words).allMatch(o -> says(o, words));
    }
    assertThat(expected.mustSayInFull()).allMatch(words -> says(full.out(), words));
    assertThat(expected.mustNotSay()).isNotEmpty();
    for (String words : expected.mustNotSay()) {
      assertThat(List.of(brief.out(), full.out(), page)).as(words).noneMatch(o -> says(o, words));
    }
  }

  /** Whole words, in any case, over the ends of lines; a number is no part of a longer number. */
  private static boolean says(String text, String words) {
    String joined =
        String.join("\\s+", Pattern.compile(" ").splitAsStream(words).map(Pattern::quote).toList());
    return Pattern.compile("(?<![\\w.])" + joined + "(?!\\w|\\.\\w)", Pattern.CASE_INSENSITIVE)
        .matcher(text)
        .find();
  }

  /**
   * The first run from severe to mild, and explain the failure where anything does. No headline
   * that one of the rest leads, and none of the first stands under, comes before them.
   */
  private static void first(Review review, String subject, Expected.Lists lists) {
    List<Placed> shown = placed(review, subject);
    List<Placed> first = find(shown, lists.first());
    List<Placed> also = find(shown, lists.also());
    assertThat(first)
        .as("from severe to mild")
        .isSortedAccordingTo((a, b) -> b.severity().compareTo(a.severity()));
    if (shown.stream().anyMatch(Placed::fits)) {
      assertThat(first).as("fits the failure").allMatch(Placed::fits);
    }
    for (Placed one : first) {
      assertThat(also)
          .filteredOn(Placed::leads)
          .filteredOn(other -> first.stream().noneMatch(f -> f.place() == other.place()))
          .as("not before " + one)
          .noneMatch(other -> other.place() < one.place());
    }
  }

  private static List<Placed> find(List<Placed> shown, List<String> principles) {
    return principles.stream()
        .map(
            id ->
                shown.stream()
                    .filter(placed -> placed.principle().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(id + " is not shown as unmet")))
        .toList();
  }

  private static List<Placed> placed(Review review, String subject) {
    List<Placed> placed = new ArrayList<>();
    for (PlanDemands plan : review.demands()) {
      if (plan.plan().equals(subject)) {
        for (PlanDemands.Demand demand : plan.demands()) {
          if (demand.answer().verdict() == VerdictKind.UNMET) {
            placed.add(place(demand.answer(), placed.size(), false, true));
          }
        }
        return placed;
      }
    }
    Chapter chapter =
        review.chapters().stream()
            .filter(c -> c.subject().equals(subject))
            .findFirst()
            .orElseThrow();
    int place = 0;
    for (Headline headline : chapter.fits()) {
      add(placed, headline, place++, true);
    }
    for (Headline headline : chapter.others()) {
      add(placed, headline, place++, false);
    }
    return placed;
  }

  private static void add(List<Placed> placed, Headline headline, int place, boolean fits) {
    placed.add(place(headline.lead(), place, fits, true));
    headline.nested().forEach(line -> placed.add(place(line, place, fits, false)));
  }

  private static Placed place(Line line, int place, boolean fits, boolean leads) {
    return new Placed(line.principle(), line.severity().orElseThrow(), place, fits, leads);
  }

  private static Answer review(Path file, String... options) {
    List<String> command = new ArrayList<>(List.of("review", file.toString()));
    command.addAll(List.of(options));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int code =
        Main.run(
            command.toArray(String[]::new),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            System.err);
    return new Answer(code, out.toString(StandardCharsets.UTF_8));
  }
}
