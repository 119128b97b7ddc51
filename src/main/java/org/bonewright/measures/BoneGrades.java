package org.bonewright.measures;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.BoneGrade;
import org.bonewright.casefile.BoneQuality;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;

/**
 * Which grades the bone may have, as far as was known when an operation began.
 *
 * <p>Measured bone has the worst grade that a measurement shows; two stripped screws show poor bone
 * (both from memory). Unmeasured bone is taken as good, unless there is or may be a reason to
 * measure ({@link BoneDoubt}), or Hounsfield units hint at one; then any grade is possible. The
 * thickness of a thin bone's cortex has no cut-off and counts as no measurement.
 */
public final class BoneGrades {

  private BoneGrades() {}

  /** Return the grades that the bone may have; one where it is known, or taken as good. */
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

  /** Return the grades that measurements show; none where nothing was measured. */
  public static Set<BoneGrade> measured(Subject subject) {
    List<BoneQuality> known =
        subject.caseFile().bone().quality().stream()
            .filter(quality -> quality.day().map(subject::knows).orElse(true))
            .toList();
    return BoneGrade.measured(subject.caseFile().bone().name(), known);
  }

  /** Return why the bone should be measured, in words; none where nothing speaks for it. */
  public static List<String> reasonsToMeasure(Subject subject) {
    List<String> reasons = new ArrayList<>();
    boolean hint =
        subject.caseFile().bone().quality().stream()
            .filter(quality -> quality.day().map(subject::knows).orElse(true))
            .anyMatch(quality -> quality.method() == BoneQuality.Method.CT_HOUNSFIELD);
    if (hint && measured(subject).isEmpty()) {
      reasons.add("Hounsfield units, which hint but grade nothing");
    }
    BoneDoubt.of(subject).reasons().forEach(reason -> reasons.add(reason.text()));
    return reasons;
  }

  /** Return how many screws of earlier plates are recorded as stripped. */
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
