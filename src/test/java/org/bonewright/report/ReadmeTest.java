package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
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

  private static Predicate<String> not(Predicate<String> condition) {
    return condition.negate();
  }
}
