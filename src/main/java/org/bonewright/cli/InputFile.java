package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.bonewright.casefile.reading.Problem;

/** A file named on the command line, or standard input. */
final class InputFile {

  /** More is never read: a file that is meant is far smaller, and the reader says so. */
  private static final int READ_AT_MOST = 4 * 1024 * 1024 + 1;

  /** Most problems that are shown of one file. */
  static final int PROBLEMS_SHOWN = 100;

  private final String name;

  InputFile(String name) {
    this.name = name;
  }

  /**
   * Return its bytes.
   *
   * @throws Unusable if it cannot be read
   */
  byte[] bytes() throws Unusable {
    try (InputStream in = name.equals("-") ? System.in : Files.newInputStream(path())) {
      return in.readNBytes(READ_AT_MOST);
    } catch (IOException e) {
      throw new Unusable(name + " cannot be read: it is not there, not a file, or not readable.");
    }
  }

  /**
   * Return that the file cannot be used, with every problem.
   *
   * @param end the last sentence
   */
  Unusable unusable(List<Problem> problems, String end) {
    long errors = problems.stream().filter(Problem::isError).count();
    String shown = name.equals("-") ? "Standard input" : name;
    StringBuilder text =
        new StringBuilder(
            shown + " cannot be used: " + errors + (errors == 1 ? " error.\n" : " errors.\n"));
    problems.stream()
        .limit(PROBLEMS_SHOWN)
        .forEach(p -> text.append("  ").append(p.inWords()).append('\n'));
    if (problems.size() > PROBLEMS_SHOWN) {
      text.append("  and ").append(problems.size() - PROBLEMS_SHOWN).append(" more\n");
    }
    return new Unusable(text.append(end).toString());
  }

  private Path path() throws Unusable {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new Unusable(name + " is not a file name.");
    }
  }
}
