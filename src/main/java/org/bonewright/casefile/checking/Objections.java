package org.bonewright.casefile.checking;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Problem.Severity;

/** Everything that the checks object to in one file. */
final class Objections {

  private final List<Problem> all = new ArrayList<>();

  /** Note a certain contradiction: the file is refused. */
  void refuse(At at, String found, String allowed) {
    note(Severity.ERROR, at, found, allowed);
  }

  /** Note a certain contradiction with a hint, a full sentence. */
  void refuse(At at, String found, String allowed, String hint) {
    all.add(Problem.error(at.pointer(), found, allowed).withHint(hint));
  }

  /** Note something improbable: the file is used, a person should look. */
  void warn(At at, String found, String allowed) {
    note(Severity.WARNING, at, found, allowed);
  }

  /** Note something of this severity. */
  void note(Severity severity, At at, String found, String allowed) {
    all.add(
        severity == Severity.ERROR
            ? Problem.error(at.pointer(), found, allowed)
            : Problem.warning(at.pointer(), found, allowed));
  }

  /** Return whether nothing was noted so far. */
  boolean areNone() {
    return all.isEmpty();
  }

  /** Return everything noted, in the order of the pointers. */
  List<Problem> inOrder() {
    return all.stream().map(PointerSteps::of).sorted().map(PointerSteps::problem).toList();
  }
}
