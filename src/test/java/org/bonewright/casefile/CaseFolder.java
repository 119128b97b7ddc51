package org.bonewright.casefile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The folder {@code cases}: demos, sound and faulty constructs, published and base cases. */
public final class CaseFolder {

  private static final Path ROOT = Path.of("cases");

  /** Bare constructs, which are no cases. */
  private static final Path BENCH = ROOT.resolve("bench");

  private CaseFolder() {}

  /** Return every file in it that holds a case, in order of its path. */
  public static List<Path> files() {
    try (Stream<Path> files = Files.walk(ROOT)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.startsWith(BENCH))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Return the case of a file. */
  public static CaseFile read(Path file) {
    try {
      return CaseText.of(Files.readString(file)).file();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
