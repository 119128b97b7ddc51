package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class EngineTest {

  @Test
  void the_version_is_that_of_the_build() throws IOException {
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains(
            "<artifactId>bonewright</artifactId>\n  <version>" + Engine.VERSION + "</version>");
  }
}
