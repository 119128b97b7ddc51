package org.bonewright.measures.setting;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Removal;
import org.bonewright.measures.Subject;

/**
 * Whether a stage of a plan holds the bone for a time only: a later stage takes out every plate,
 * nail and fixator that it puts in, and puts in others. A fixator that a later stage takes off, and
 * nothing follows it, was to hold the bone until it united.
 */
final class GivesWay {

  private GivesWay() {}

  /** Return whether a subject is such a stage. */
  static boolean is(Subject subject) {
    if (subject.scope() != Subject.Scope.STAGE) {
      return false;
    }
    Operation stage = subject.operation();
    Set<String> put =
        stage.fixation().stream()
            .flatMap(List::stream)
            .filter(Implant::isMain)
            .map(implant -> stage.id() + "/" + implant.id())
            .collect(Collectors.toSet());
    return !put.isEmpty()
        && subject.plan().map(plan -> later(plan, stage)).orElse(List.of()).stream()
            .filter(next -> next.carriesMainImplant().orElse(false))
            .anyMatch(next -> taken(next).containsAll(put));
  }

  private static List<Operation> later(Plan plan, Operation stage) {
    return plan.stages().stream().dropWhile(each -> !each.id().equals(stage.id())).skip(1).toList();
  }

  private static Set<String> taken(Operation operation) {
    return operation.removed().stream()
        .flatMap(List::stream)
        .filter(Removal::isWhole)
        .map(Removal::of)
        .collect(Collectors.toSet());
  }
}
