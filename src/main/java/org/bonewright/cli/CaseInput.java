package org.bonewright.cli;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Reading;

/** A case that was read from a file, or from standard input, and can be used. */
final class CaseInput {

  private final byte[] bytes;
  private final CaseFile caseFile;
  private final List<Problem> problems;

  private CaseInput(byte[] bytes, CaseFile caseFile, List<Problem> problems) {
    this.bytes = bytes;
    this.caseFile = caseFile;
    this.problems = problems;
  }

  /**
   * Read and check a file.
   *
   * @param name as the user named it; - is standard input
   * @throws Unusable if it cannot be read, or has an error; the message lists every problem
   */
  static CaseInput read(String name) throws Unusable {
    InputFile file = new InputFile(name);
    byte[] bytes = file.bytes();
    Reading reading = new Intake().read(bytes);
    if (reading.caseFile().isEmpty()) {
      throw file.unusable(
          reading.problems(),
          "Nothing was reviewed. The format is described by: bonewright schema");
    }
    return new CaseInput(bytes, reading.caseFile().get(), reading.problems());
  }

  /** Return the bytes of the file. */
  byte[] bytes() {
    return bytes.clone();
  }

  /** Return the case. */
  CaseFile caseFile() {
    return caseFile;
  }

  /** Return how many places are worth a second look. */
  int warned() {
    return problems.size();
  }

  /** Return the warnings as text, empty when there are none. */
  String warnings() {
    StringBuilder text = new StringBuilder();
    problems.stream()
        .limit(InputFile.PROBLEMS_SHOWN)
        .forEach(problem -> text.append(problem.inWords()).append('\n'));
    return text.toString();
  }
}
