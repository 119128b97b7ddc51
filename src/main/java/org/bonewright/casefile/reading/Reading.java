package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;

/**
 * What reading a case file gave.
 *
 * @param caseFile the case; present exactly when no problem is an error
 * @param problems every problem, in the order of the file
 */
public record Reading(Optional<CaseFile> caseFile, List<Problem> problems) {

  /**
   * Keep the problems as they are now.
   *
   * @throws IllegalArgumentException if there is a case in spite of an error, or neither
   */
  public Reading {
    problems = List.copyOf(problems);
    if (caseFile.isPresent() == problems.stream().anyMatch(Problem::isError)) {
      throw new IllegalArgumentException("either a case or an error");
    }
  }
}
