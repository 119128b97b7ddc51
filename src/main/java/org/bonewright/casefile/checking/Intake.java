package org.bonewright.casefile.checking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.reading.CaseReader;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Reading;

/**
 * Takes in a case file: reads it, and where it could be read, holds its parts against each other.
 * Only what passes both goes on to be reviewed.
 */
public final class Intake {

  private final CaseReader reader = new CaseReader();

  /** Return the case, or every problem of the file. */
  public Reading read(byte[] bytes) {
    Reading reading = reader.read(bytes);
    Optional<CaseFile> caseFile = reading.caseFile();
    if (caseFile.isEmpty()) {
      return reading;
    }
    List<Problem> problems = new ArrayList<>(reading.problems());
    problems.addAll(new Consistency().check(caseFile.get()));
    boolean refused = problems.stream().anyMatch(Problem::isError);
    return new Reading(refused ? Optional.empty() : caseFile, problems);
  }
}
