package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadmeTest {

  private static final int LINES = 29;

  @Test
  void the_readme_shows_what_the_demo_really_prints() throws IOException {
    List<String> shown =
        Files.readAllLines(Path.of("src/test/resources/golden/femur-three-operations.txt"));

    assertThat(Files.readString(Path.of("README.md")))
        .contains(String.join("\n", shown.subList(0, LINES)));
  }
}
