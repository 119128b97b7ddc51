package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.SampleResult;
import org.bonewright.measures.Subject;

/**
 * What was known of confirmed infection when a subject began.
 *
 * <p>A confirmatory sign, once recorded, counts until an operation with debridement and antibiotics
 * has followed it and the same sign has been looked for again and not found. A bedside sign that
 * was not examined is open; a test that was not done is an answer (Metsemakers et al., Injury 2018,
 * with our conventions on time).
 */
public final class InfectionEvidence {

  /**
   * One kind of confirmatory sign.
   *
   * @param name the sign in words
   * @param field where it stands among the infection fields
   * @param question the question when it is open
   * @param present whether it counts, does not count, or is open (empty)
   */
  public record Sign(String name, String field, String question, Optional<Boolean> present) {}

  private final Subject subject;

  /** Look at what a subject knew. */
  public InfectionEvidence(Subject subject) {
    this.subject = subject;
  }

  /** Return every kind of sign, in a fixed order. */
  public List<Sign> signs() {
    List<Sign> signs = new ArrayList<>();
    signs.add(
        bedside(
            "sinus", "sinus", InfectionSigns::sinus, "Is there a sinus down to bone or implant?"));
    signs.add(
        bedside(
            "wound breakdown",
            "woundBreakdown",
            InfectionSigns::woundBreakdown,
            "Has the wound broken down to bone or implant?"));
    signs.add(bedside("pus", "pus", InfectionSigns::pus, "Is there, or was there, pus?"));
    signs.add(
        new Sign(
            "two samples with the same organism",
            "samples",
            "How many deep samples were taken, and in how many did the same organism grow?",
            lasting(
                finding ->
                    infection(finding, InfectionSigns::samples).map(InfectionEvidence::grown))));
    signs.add(
        new Sign(
            "histology",
            "histology",
            "What did histology of deep tissue show (not done is an answer)?",
            lasting(
                finding ->
                    infection(finding, InfectionSigns::histology)
                        .map(InfectionEvidence::positive))));
    if (failedByInfection()) {
      signs.add(new Sign("an operation that failed by infection", "", "", Optional.of(true)));
    }
    return signs;
  }

  private Sign bedside(
      String name,
      String field,
      Function<InfectionSigns, Optional<Examination>> sign,
      String question) {
    return new Sign(
        name,
        field,
        question,
        lasting(finding -> infection(finding, sign).map(InfectionEvidence::examined)));
  }

  /** The latest answer, unless an earlier yes has not been dealt with since. */
  private Optional<Boolean> lasting(Function<Finding, Optional<Answer>> question) {
    Optional<Answer> latest = Optional.empty();
    for (Finding finding : subject.findings()) {
      Optional<Answer> answer = question.apply(finding);
      if (answer.equals(Optional.of(Answer.YES))) {
        boolean cleared = latest.equals(Optional.of(Answer.NO)) && caredFor(finding.day());
        return Optional.of(!cleared);
      }
      latest = latest.or(() -> answer);
    }
    return latest.filter(answer -> answer != Answer.UNKNOWN).map(answer -> false);
  }

  private boolean caredFor(Quantity since) {
    return subject.before().stream()
        .filter(o -> o.day().map(day -> day.middle() >= since.middle()).orElse(false))
        .anyMatch(InfectionEvidence::directed);
  }

  /** Return whether an operation, or a stage, is directed at an infection. */
  static boolean directed(Operation operation) {
    Optional<InfectionCare> care = operation.infectionCare();
    return care.flatMap(InfectionCare::debridement).equals(Optional.of(Answer.YES))
        && care.flatMap(InfectionCare::antibioticWeeks).map(w -> w.min() > 0).orElse(false);
  }

  private boolean failedByInfection() {
    boolean failed = false;
    for (Operation operation : subject.before()) {
      failed &= !directed(operation);
      failed |=
          operation
              .outcome()
              .flatMap(Outcome::mode)
              .map(mode -> mode == FailureMode.INFECTION)
              .orElse(false);
    }
    return failed;
  }

  private static <T> Optional<T> infection(
      Finding finding, Function<InfectionSigns, Optional<T>> question) {
    return finding.infection().flatMap(question);
  }

  private static Answer examined(Examination examination) {
    return switch (examination) {
      case PRESENT -> Answer.YES;
      case ABSENT -> Answer.NO;
      case NOT_DONE, UNKNOWN -> Answer.UNKNOWN;
    };
  }

  /** Fewer than two samples cannot prove it. */
  private static Answer grown(SampleResult result) {
    if (result.taken().max() < 2) {
      return Answer.NO;
    }
    Optional<Quantity> same = result.sameOrganism();
    if (same.isEmpty()) {
      return Answer.UNKNOWN;
    }
    return same.get().min() >= 2 ? Answer.YES : same.get().max() < 2 ? Answer.NO : Answer.UNKNOWN;
  }

  private static Answer positive(InfectionSigns.Histology histology) {
    return switch (histology) {
      case ORGANISMS, NEUTROPHILS_ABOVE_5 -> Answer.YES;
      case NEGATIVE, NOT_DONE -> Answer.NO;
      case UNKNOWN -> Answer.UNKNOWN;
    };
  }
}
