package org.bonewright.measures.healing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.NonOperativeTreatment;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether a small remedy was tried, or is what is done now. */
final class SmallRemedy implements Measure {

  private static final double LONG_ENOUGH_DAYS = 42;

  @Override
  public Definition definition() {
    return new Definition(
        "small-remedy",
        "Small remedy tried",
        Definition.yesOrNo(),
        "yes when since the last operation, for at least six weeks, there was a brace, a cast,"
            + " ultrasound, shock waves, a drug or watching on file; when a delayed union was looked"
            + " at again six weeks later; when bolts were taken out and nothing put in, then or now."
            + " No when none is on file",
        List.of(
            "nonOperative/kind",
            "nonOperative/fromDay",
            "nonOperative/toDay",
            "findings/diagnosis",
            "operations/removed"),
        "common practice, no source; six weeks are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Course course = Course.leadingTo(scene.subject());
    List<String> tried = new ArrayList<>();
    course.nonOperative().stream()
        .filter(treatment -> lasted(course, treatment))
        .forEach(treatment -> tried.add(Words.of(treatment.kind())));
    if (watched(course.findings().orElse(List.of()))) {
      tried.add("a delayed union looked at again");
    }
    boolean dynamised =
        scene.subject().steps().stream().allMatch(SmallRemedy::onlyBoltsOut)
            || course.operationsSince().stream().anyMatch(SmallRemedy::onlyBoltsOut);
    if (dynamised) {
      tried.add("bolts out");
    }
    return Diagnosis.onFile(
        tried.isEmpty() ? "no" : "yes",
        tried.isEmpty() ? "none on file" : String.join(", ", tried));
  }

  private static boolean lasted(Course course, NonOperativeTreatment treatment) {
    Optional<Quantity> until = treatment.toDay().or(course::lastDay);
    return treatment.kind() != NonOperativeTreatment.Kind.TRACTION
        && course.began().map(day -> treatment.fromDay().min() >= day.max()).orElse(false)
        && until
            .map(day -> day.min() - treatment.fromDay().max() >= LONG_ENOUGH_DAYS)
            .orElse(false);
  }

  private static boolean watched(List<Finding> findings) {
    Optional<Finding> delayed =
        findings.stream()
            .filter(f -> f.diagnosis().equals(Optional.of(Finding.Diagnosis.DELAYED_UNION)))
            .findFirst();
    return delayed
        .map(
            first ->
                findings.get(findings.size() - 1).day().min() - first.day().max()
                    >= LONG_ENOUGH_DAYS)
        .orElse(false);
  }

  private static boolean onlyBoltsOut(Operation step) {
    boolean bolts =
        step.removed().stream()
            .flatMap(List::stream)
            .anyMatch(removal -> !removal.bolts().isEmpty());
    return bolts && step.fixation().map(List::isEmpty).orElse(false);
  }
}
