package org.bonewright.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.Step;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Zone;

/** The operations up to and including a subject, each with the zone as described before it. */
final class Steps {

  private final Subject subject;

  Steps(Subject subject) {
    this.subject = subject;
  }

  List<Step> all() {
    List<Operation> operations = subject.upToHere();
    int done = subject.caseFile().operations().size();
    List<Step> steps = new ArrayList<>();
    Optional<Finding> before = Optional.empty();
    for (int i = 0; i < operations.size(); i++) {
      Subject then =
          new Subject(
              operations.get(i).id(),
              i < done ? Subject.Scope.OPERATION : Subject.Scope.STAGE,
              subject.caseFile(),
              List.of(operations.get(i)),
              operations.subList(0, i));
      Optional<Finding> described =
          then.findings().stream().filter(finding -> finding.zone().isPresent()).findFirst();
      boolean anew = i == 0 || !described.equals(before);
      Optional<Zone> zone =
          described.flatMap(Finding::zone).or(() -> subject.caseFile().injury().zone());
      steps.add(
          new Step(
              operations.get(i),
              anew
                  ? Optional.of(zone.map(FractureZone::of).orElse(FractureZone.UNKNOWN))
                  : Optional.empty()));
      before = described;
    }
    return List.copyOf(steps);
  }
}
