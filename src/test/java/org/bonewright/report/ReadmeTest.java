package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Reviewer;
import org.bonewright.site.SiteReader;
import org.junit.jupiter.api.Test;

class ReadmeTest {

  private static final Path SHOWN = Path.of("src/test/resources/golden/femur-three-operations.txt");

  @Test
  void the_readme_shows_what_the_demo_really_prints() throws IOException {
    List<String> lines = Files.readAllLines(SHOWN);
    String beginning =
        String.join("\n", lines.stream().takeWhile(not(line -> line.startsWith("op-3"))).toList());
    String plan =
        String.join(
            "\n",
            lines.stream()
                .dropWhile(not(line -> line.startsWith("WHAT plan-a")))
                .takeWhile(not(String::isEmpty))
                .toList());

    assertThat(Files.readString(Path.of("README.md"))).contains(beginning).contains(plan);
  }

  @Test
  void the_readme_shows_the_local_limits_of_the_example_as_they_are_printed() throws IOException {
    RuleSet published = RuleSet.built();
    RuleSet local =
        published.with(
            new SiteReader(published)
                .read(Files.readAllBytes(Path.of("sites/example.json")))
                .changes()
                .orElseThrow());
    byte[] demo = Files.readAllBytes(Path.of("cases/demo/femur-three-operations/case.json"));
    String shown =
        new TextReport(false)
            .render(new Reviewer(local).review(new Intake().read(demo).caseFile().orElseThrow()));
    String section =
        String.join(
            "\n",
            shown
                .lines()
                .dropWhile(not(line -> line.startsWith("LOCAL LIMITS")))
                .takeWhile(not(String::isEmpty))
                .toList());

    assertThat(section).isNotEmpty();
    assertThat(Files.readString(Path.of("README.md"))).contains(section);
  }

  private static Predicate<String> not(Predicate<String> condition) {
    return condition.negate();
  }
}
