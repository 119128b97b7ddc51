package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookCommandTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  @Test
  void writes_pages_and_a_pdf_and_leaves_other_files_alone() throws IOException {
    Path other = Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThat(run("handbook", "--output", folder.toString(), "--force")).isZero();
    assertThat(folder.resolve("index.html")).content().contains("Bonewright handbook");
    assertThat(folder.resolve("principles/plate-span-ratio.html")).exists();
    assertThat(Files.readAllBytes(folder.resolve("bonewright-handbook.pdf")))
        .startsWith("%PDF-1.".getBytes(StandardCharsets.US_ASCII));
    assertThat(other).hasContent("mine");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("begin with", "index.html");
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("Writing", "Making the PDF");
  }

  @Test
  void leaves_a_folder_alone_that_is_not_empty() throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThat(run("handbook", "--output", folder.toString())).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("is not empty", "--force");
    assertThat(folder.resolve("index.html")).doesNotExist();
  }

  @Test
  void says_that_a_file_is_no_folder() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThat(run("handbook", "--output", file.toString(), "--force")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("is a file; name a folder");
  }

  @Test
  void says_that_it_cannot_write_there() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThat(run("handbook", "--output", file.resolve("below").toString())).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("cannot be made or read");
  }

  @Test
  void says_where_in_the_folder_it_cannot_write() throws IOException {
    Files.createDirectories(folder.resolve("index.html/taken"));
    assertThat(run("handbook", "--output", folder.toString(), "--force")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("index.html failed");
  }

  @Test
  void asks_for_the_folder() {
    assertThat(run("handbook")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("--output");
  }

  @Test
  void shows_examples_with_its_help() {
    assertThat(run("handbook", "--help")).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("bonewright handbook --output handbook --force");
  }

  private int run(String... arguments) {
    return Main.run(
        arguments,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }
}
