package org.bonewright.casefile.reading;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsLast;

import java.util.ArrayList;
import java.util.List;

/** Every problem met so far in one file, and every record that could be made of it. */
final class Problems {

  private final List<Problem> all = new ArrayList<>();
  private final List<ReadPart> parts = new ArrayList<>();

  void made(ReadPart part) {
    parts.add(part);
  }

  /** Return the records that could be made, those inside others first. */
  List<ReadPart> parts() {
    return List.copyOf(parts);
  }

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
