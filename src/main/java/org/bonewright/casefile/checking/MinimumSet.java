package org.bonewright.casefile.checking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Reduction;

/** The answers without which a review has little to say, about fifteen for each operation. */
public final class MinimumSet {

  private final CaseFile caseFile;
  private final List<Missing> missing = new ArrayList<>();

  /**
   * An answer that is missing.
   *
   * @param pointer JSON pointer to where it would stand
   * @param question the question
   */
  public record Missing(String pointer, String question) {}

  /** Make the list for a case. */
  public MinimumSet(CaseFile caseFile) {
    this.caseFile = caseFile;
  }

  /** Return what is missing, in the order of the file. */
  public List<Missing> missing() {
    missing.clear();
    need(caseFile.patient().ageYears(), "/patient/ageYears", "How old is the patient?");
    need(caseFile.injury().pattern(), "/injury/pattern", "What was the fracture pattern?");
    for (int i = 0; i < caseFile.operations().size(); i++) {
      operation(caseFile.operations().get(i), "/operations/" + i);
    }
    now();
    return List.copyOf(missing);
  }

  private void operation(Operation operation, String at) {
    need(operation.day(), at + "/day", "On which day, roughly (a range will do)?");
    need(operation.fixation(), at + "/fixation", "Which implants were put in?");
    List<Implant> implants = operation.fixation().orElse(List.of());
    for (int i = 0; i < implants.size(); i++) {
      String implant = at + "/fixation/" + i;
      if (implants.get(i) instanceof Plate plate) {
        need(plate.family(), implant + "/family", "Of which family is the plate?");
        need(plate.holes(), implant + "/holes", "How many holes has it?");
        need(plate.place(), implant + "/place", "Which two holes lie either side of the zone?");
        need(plate.screws(), implant + "/screws", "Which holes hold which kind of screw?");
      } else if (implants.get(i) instanceof Nail nail) {
        need(nail.outerMm(), implant + "/outerMm", "What is the nail's diameter?");
        need(nail.bolts(), implant + "/bolts", "Which bolts lock it?");
      }
    }
    boolean putsInNothing = operation.fixation().map(List::isEmpty).orElse(false);
    if (!putsInNothing) {
      need(
          operation.reduction().flatMap(Reduction::gapNearMm),
          at + "/reduction/gapNearMm",
          "How wide a gap was left: none, up to 2 mm, more?");
    }
    need(operation.outcome(), at + "/outcome", "What became of it?");
    boolean failed =
        operation.outcome().map(o -> o.result() == Outcome.Result.FAILED).orElse(false);
    if (failed) {
      mode(operation.outcome().flatMap(Outcome::mode), at + "/outcome/mode");
      need(
          operation.outcome().flatMap(o -> o.day().or(o::weeksAfter)),
          at + "/outcome/day",
          "When did it fail?");
    }
  }

  /** A mode that leaves open which of two it was is on file; what it leaves open is asked for. */
  private void mode(Optional<FailureMode> mode, String pointer) {
    need(
        mode.filter(FailureMode::isExact),
        pointer,
        mode.map(MinimumSet::whichOf).orElse("How did it fail?"));
  }

  private static String whichOf(FailureMode mode) {
    return "Which was it: "
        + mode.possible().stream().map(Wording::asWritten).collect(Collectors.joining(" or "))
        + "?";
  }

  private void now() {
    List<Operation> operations = caseFile.operations();
    boolean united =
        !operations.isEmpty()
            && operations
                .get(operations.size() - 1)
                .outcome()
                .map(o -> o.result() == Outcome.Result.UNITED)
                .orElse(false);
    if (united && caseFile.plans().isEmpty()) {
      return;
    }
    List<Finding> findings = caseFile.findings();
    String last = "/findings/" + Math.max(0, findings.size() - 1);
    Optional<Finding> latest =
        findings.isEmpty() ? Optional.empty() : Optional.of(findings.get(findings.size() - 1));
    Optional<InfectionSigns> infection = latest.flatMap(Finding::infection);
    need(latest.flatMap(Finding::diagnosis), last + "/diagnosis", "United or not, as of now?");
    need(
        latest.flatMap(f -> f.films().stream().findFirst()).flatMap(f -> f.callus()),
        last + "/films/0/callus",
        "Is there callus?");
    need(infection.flatMap(InfectionSigns::sinus), last + "/infection/sinus", "Is there a sinus?");
    need(infection.flatMap(InfectionSigns::pus), last + "/infection/pus", "Is there pus?");
    need(
        infection.flatMap(InfectionSigns::localSigns),
        last + "/infection/localSigns",
        "Are there local signs of infection?");
    need(
        infection.flatMap(InfectionSigns::crpMgL),
        last + "/infection/crpMgL",
        "What is the C-reactive protein, in mg/L?");
  }

  private void need(Optional<?> answer, String pointer, String question) {
    if (answer.isEmpty()) {
      missing.add(new Missing(pointer, question));
    }
  }
}
