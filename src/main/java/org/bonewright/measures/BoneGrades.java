package org.bonewright.measures;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.BoneGrade;
import org.bonewright.casefile.BoneQuality;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;

/**
 * Which grades the bone may have, as far as was known when an operation began.
 *
 * <p>Measured bone has the worst grade that a measurement shows; two stripped screws show poor bone
 * (both from memory). Unmeasured bone is taken as good, unless there is a reason to measure: age 60
 * or more, fracture from standing height, steroids, or an earlier operation; then any grade is
 * possible.
 */
public final class BoneGrades {

  private static final double AGE_OF_DOUBT = 60;

  private BoneGrades() {}

  public static Set<BoneGrade> possible(Subject subject) {
    if (strippedScrews(subject) >= 2) {
      return EnumSet.of(BoneGrade.POOR);
    }
    Set<BoneGrade> measured = measured(subject);
    if (!measured.isEmpty()) {
      return measured;
    }
    return reasonsToMeasure(subject).isEmpty()
        ? EnumSet.of(BoneGrade.GOOD)
        : EnumSet.allOf(BoneGrade.class);
  }

  public static Set<BoneGrade> measured(Subject subject) {
    List<BoneQuality> known =
        subject.caseFile().bone().quality().stream()
            .filter(quality -> quality.day().map(subject::knows).orElse(true))
            .toList();
    return BoneGrade.measured(subject.caseFile().bone().name(), known);
  }

  public static List<String> reasonsToMeasure(Subject subject) {
    List<String> reasons = new ArrayList<>();
    boolean tried =
        subject.caseFile().bone().quality().stream()
            .map(quality -> BoneGrade.measured(subject.caseFile().bone().name(), List.of(quality)))
            .anyMatch(Set::isEmpty);
    if (tried && measured(subject).isEmpty()) {
      reasons.add("measured by a method that grades nothing in this bone");
    }
    Optional<Quantity> age = subject.caseFile().patient().ageYears();
    if (age.isEmpty()) {
      reasons.add("age not stated");
    } else if (age.get().max() >= AGE_OF_DOUBT) {
      reasons.add("age 60 or more");
    }
    if (subject.caseFile().injury().energy().equals(Optional.of(Injury.Energy.STANDING_HEIGHT))) {
      reasons.add("fracture from standing height");
    }
    boolean steroid =
        subject.latest(Finding::host).flatMap(Host::drugs).stream()
            .anyMatch(drugs -> drugs.contains(Host.Drug.STEROID));
    if (steroid) {
      reasons.add("steroids");
    }
    if (subject.isRevision()) {
      reasons.add("operated before");
    }
    return reasons;
  }

  public static long strippedScrews(Subject subject) {
    return subject.before().stream()
        .map(Operation::fixation)
        .flatMap(Optional::stream)
        .flatMap(List::stream)
        .filter(Plate.class::isInstance)
        .map(Plate.class::cast)
        .flatMap(plate -> plate.screws().stream().flatMap(List::stream))
        .filter(row -> row.state().equals(Optional.of(ScrewRow.State.STRIPPED)))
        .mapToLong(row -> row.at().size())
        .sum();
  }
}
