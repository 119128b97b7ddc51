package org.bonewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** Where an answer goes: standard output, or a file that appears whole or not at all. */
final class Output {

  private final Optional<String> file;
  private final PrintWriter standard;

  Output(Optional<String> file, PrintWriter standard) {
    this.file = file;
    this.standard = standard;
  }

  /**
   * Write the answer.
   *
   * @throws Unusable if the file cannot be written
   */
  void write(String text) throws Unusable {
    if (file.isEmpty()) {
      standard.print(text);
      standard.flush();
      return;
    }
    try {
      Path target = Path.of(file.get()).toAbsolutePath();
      if (Files.isDirectory(target)) {
        throw new Unusable(file.get() + " is a folder; name a file.");
      }
      Path draft = target.resolveSibling(".bonewright-" + ProcessHandle.current().pid() + ".part");
      try {
        Files.writeString(draft, text, StandardCharsets.UTF_8);
        Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (IOException | InvalidPathException e) {
      throw new Unusable(file.get() + " cannot be written: no such folder, or no right to write.");
    }
  }
}
