package org.bonewright.server.rest;

import java.util.List;
import org.bonewright.casefile.reading.Problem;

/** Says that a case cannot be reviewed, with every problem that it has. */
final class UnusableCase extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  UnusableCase(List<Problem> problems) {
    super(problems.size() + " problems");
    this.problems = List.copyOf(problems);
  }

  List<Problem> problems() {
    return problems;
  }
}
