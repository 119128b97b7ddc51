package org.bonewright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;

/** Finds the operation, plan or stage that is named on the command line. */
final class SubjectChoice {

  private final CaseFile file;
  private final List<Subject> subjects;

  SubjectChoice(CaseFile file) {
    this.file = file;
    this.subjects = Subject.of(file);
  }

  /**
   * Return the subject of this name.
   *
   * @throws Unusable if there is none; the message names those that there are
   */
  Subject named(String id) throws Unusable {
    Optional<Subject> found =
        subjects.stream().filter(subject -> subject.id().equals(id)).findFirst();
    return found.orElseThrow(() -> new Unusable("There is no " + id + " in this case. " + all()));
  }

  /**
   * Return the chosen plan, else the last operation.
   *
   * @throws Unusable if the case has neither
   */
  Subject usual() throws Unusable {
    Optional<Subject> plan =
        file.plans().stream()
            .filter(p -> p.chosen().orElse(false))
            .map(Plan::id)
            .flatMap(id -> subjects.stream().filter(subject -> subject.id().equals(id)))
            .findFirst();
    Optional<Subject> last =
        subjects.stream()
            .filter(subject -> subject.scope() == Subject.Scope.OPERATION)
            .reduce((first, second) -> second);
    Optional<Subject> found = plan.or(() -> last).or(() -> subjects.stream().findFirst());
    return found.orElseThrow(
        () -> new Unusable("The case has no operation and no plan: there is nothing to draw."));
  }

  private String all() {
    return subjects.isEmpty()
        ? "It has no operation and no plan."
        : "It has: " + subjects.stream().map(Subject::id).collect(Collectors.joining(", ")) + ".";
  }
}
