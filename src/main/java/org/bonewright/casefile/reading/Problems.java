package org.bonewright.casefile.reading;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsLast;

import java.util.ArrayList;
import java.util.List;

/** Every problem met so far in one file. */
final class Problems {

  private final List<Problem> all = new ArrayList<>();

  void add(Problem problem) {
    all.add(problem);
  }

  /** Return whether anything met so far refuses the file. */
  boolean haveErrors() {
    return all.stream().anyMatch(Problem::isError);
  }

  /** Return all problems in the order in which their places follow each other in the text. */
  List<Problem> inOrder() {
    return all.stream()
        .sorted(comparing(problem -> problem.place().orElse(null), nullsLast(naturalOrder())))
        .toList();
  }
}
