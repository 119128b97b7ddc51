package org.bonewright.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.Step;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Zone;

/** The operations up to and including a subject, each with the zone as described before it. */
final class Steps {

  /** Extent of a transverse line along the bone, mm at most; our convention. */
  private static final double TRANSVERSE_MOST = 6;

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
          new Step(operations.get(i), anew ? Optional.of(zone(then, zone)) : Optional.empty()));
      before = described;
    }
    return List.copyOf(steps);
  }

  /** A transverse line that nobody measured lies within a few millimetres of the bone's length. */
  private static FractureZone zone(Subject then, Optional<Zone> described) {
    FractureZone zone = described.map(FractureZone::of).orElse(FractureZone.UNKNOWN);
    boolean transverse =
        then.latest(Finding::pattern)
            .or(() -> then.caseFile().injury().pattern())
            .equals(Optional.of(Injury.Pattern.TRANSVERSE));
    return transverse && zone.length().isEmpty()
        ? zone.withLength(
            Dimension.assumed(0, TRANSVERSE_MOST, "usual extent of a transverse line"))
        : zone;
  }
}
