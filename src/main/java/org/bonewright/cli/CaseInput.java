package org.bonewright.cli;

import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;

/** A case file named on the command line, or standard input. */
final class CaseInput {

  private final InputFile file;
  private byte[] bytes = {};

  CaseInput(String name) {
    this.file = new InputFile(name);
  }

  /**
   * Read and check the file.
   *
   * @throws Unusable if it cannot be read, or has an error; the message lists every problem
   */
  Reading read() throws Unusable {
    bytes = file.bytes();
    Reading reading = new Intake().read(bytes);
    if (reading.caseFile().isEmpty()) {
      throw file.unusable(
          reading.problems(),
          "Nothing was reviewed. The format is described by: bonewright schema");
    }
    return reading;
  }

  /** Return the bytes of the file, once it has been read. */
  byte[] bytes() {
    return bytes.clone();
  }

  /** Return the case of a file that has been read. */
  static CaseFile caseFile(Reading reading) {
    return reading
        .caseFile()
        .orElseThrow(() -> new IllegalStateException("read without error, but no case"));
  }

  /** Return the warnings as text, empty when there are none. */
  static String warnings(Reading reading) {
    StringBuilder text = new StringBuilder();
    reading.problems().stream()
        .limit(InputFile.PROBLEMS_SHOWN)
        .forEach(problem -> text.append(problem.inWords()).append('\n'));
    return text.toString();
  }
}
