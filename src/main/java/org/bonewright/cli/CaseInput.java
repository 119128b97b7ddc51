package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Reading;

/** A case file named on the command line, or standard input. */
final class CaseInput {

  /** More is never read: a case file is far smaller, and the reader says so. */
  private static final int READ_AT_MOST = 4 * 1024 * 1024 + 1;

  private static final int PROBLEMS_SHOWN = 100;

  private final String name;

  CaseInput(String name) {
    this.name = name;
  }

  /**
   * Read and check the file.
   *
   * @throws Unusable if it cannot be read, or has an error; the message lists every problem
   */
  Reading read() throws Unusable {
    Reading reading = new Intake().read(bytes());
    if (reading.caseFile().isEmpty()) {
      throw new Unusable(problems(reading.problems()));
    }
    return reading;
  }

  /** Return the case of a file that has been read. */
  static CaseFile caseFile(Reading reading) {
    return reading
        .caseFile()
        .orElseThrow(() -> new IllegalStateException("read without error, but no case"));
  }

  private String problems(List<Problem> problems) {
    long errors = problems.stream().filter(Problem::isError).count();
    StringBuilder text =
        new StringBuilder(shownName() + " cannot be used: " + count(errors, "error") + ".\n");
    problems.stream()
        .limit(PROBLEMS_SHOWN)
        .forEach(p -> text.append("  ").append(p.inWords()).append('\n'));
    if (problems.size() > PROBLEMS_SHOWN) {
      text.append("  and ").append(problems.size() - PROBLEMS_SHOWN).append(" more\n");
    }
    return text.append("Nothing was reviewed. The format is described by: bonewright schema")
        .toString();
  }

  /** Return the warnings as text, empty when there are none. */
  static String warnings(Reading reading) {
    StringBuilder text = new StringBuilder();
    reading.problems().stream()
        .limit(PROBLEMS_SHOWN)
        .forEach(problem -> text.append(problem.inWords()).append('\n'));
    return text.toString();
  }

  private static String count(long n, String noun) {
    return n + " " + noun + (n == 1 ? "" : "s");
  }

  private String shownName() {
    return name.equals("-") ? "Standard input" : name;
  }

  private byte[] bytes() throws Unusable {
    try (InputStream in = name.equals("-") ? System.in : Files.newInputStream(path())) {
      return in.readNBytes(READ_AT_MOST);
    } catch (IOException e) {
      throw new Unusable(name + " cannot be read: it is not there, not a file, or not readable.");
    }
  }

  private Path path() throws Unusable {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new Unusable(name + " is not a file name.");
    }
  }
}
