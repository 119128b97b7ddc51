package org.bonewright.measures;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.NonOperativeTreatment;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;

/**
 * Why the quality of the bone had to be measured, as far as was known when an operation began: age
 * 60 or more, fracture from standing height, steroids, disuse, or an earlier fixation.
 *
 * <p>Conventions of ours. Disuse is read as one rest in a cast, a brace or traction of more than
 * six months before the first fixation; time alone is none. What the file leaves out is a reason
 * only where something hints at weak bone: an unstated age always, an unstated energy beside a drug
 * given for weak bone. In a patient below 60 without such a hint an unstated energy, an unstated
 * list of drugs and an operation without a day are none; else every young patient's bone would be
 * in doubt.
 *
 * @param reasons what calls for a measurement, or may do so
 */
public record BoneDoubt(List<Reason> reasons) {

  private static final double AGE_OF_DOUBT = 60;

  /** Six months, in days. */
  private static final double LONG_DISUSE = 183;

  private static final Set<NonOperativeTreatment.Kind> AT_REST =
      EnumSet.of(
          NonOperativeTreatment.Kind.CAST,
          NonOperativeTreatment.Kind.BRACE,
          NonOperativeTreatment.Kind.TRACTION);

  private static final Set<Host.Drug> FOR_WEAK_BONE =
      EnumSet.of(Host.Drug.BISPHOSPHONATE, Host.Drug.DENOSUMAB);

  private static final Set<Outcome.Result> MEANT_TO_LAST =
      EnumSet.of(Outcome.Result.FAILED, Outcome.Result.UNITED, Outcome.Result.UNDER_WAY);

  /**
   * A reason to measure.
   *
   * @param text the reason, as a short clause
   * @param open what would settle whether it holds; empty where it certainly does
   */
  public record Reason(String text, Optional<MissingFact> open) {}

  public BoneDoubt {
    reasons = List.copyOf(reasons);
  }

  /** Return whether some reason certainly holds. */
  public boolean certain() {
    return reasons.stream().anyMatch(reason -> reason.open().isEmpty());
  }

  /** Return the reasons for and against measuring the bone of a subject. */
  public static BoneDoubt of(Subject subject) {
    List<Reason> reasons = new ArrayList<>();
    age(subject).ifPresent(reasons::add);
    List<Host.Drug> drugs =
        subject.latest(finding -> finding.host().flatMap(Host::drugs)).orElse(List.of());
    energy(subject, drugs).ifPresent(reasons::add);
    if (drugs.contains(Host.Drug.STEROID)) {
      reasons.add(new Reason("steroids", Optional.empty()));
    }
    revision(subject).or(() -> disuse(subject)).ifPresent(reasons::add);
    return new BoneDoubt(reasons);
  }

  private static Optional<Reason> age(Subject subject) {
    MissingFact ask = new MissingFact("patient/ageYears", "How old is the patient?");
    Optional<Quantity> age = subject.caseFile().patient().ageYears();
    if (age.isEmpty()) {
      return Optional.of(new Reason("age not stated", Optional.of(ask)));
    }
    boolean certain = age.get().min() >= AGE_OF_DOUBT;
    return age.get().max() < AGE_OF_DOUBT
        ? Optional.empty()
        : Optional.of(new Reason("age 60 or more", certain ? Optional.empty() : Optional.of(ask)));
  }

  private static Optional<Reason> energy(Subject subject, List<Host.Drug> drugs) {
    Optional<Injury.Energy> energy = subject.caseFile().injury().energy();
    if (energy.equals(Optional.of(Injury.Energy.STANDING_HEIGHT))) {
      return Optional.of(new Reason("fracture from standing height", Optional.empty()));
    }
    boolean hint = drugs.stream().anyMatch(FOR_WEAK_BONE::contains);
    return energy.isEmpty() && hint
        ? Optional.of(
            new Reason(
                "a drug for weak bone, energy of the injury not stated",
                Optional.of(
                    new MissingFact(
                        "injury/energy",
                        "Was it a fall from standing height, low or high energy?"))))
        : Optional.empty();
  }

  private static Optional<Reason> revision(Subject subject) {
    List<Operation> fixed =
        subject.before().stream()
            .limit(subject.caseFile().operations().size())
            .filter(operation -> operation.fixation().map(put -> !put.isEmpty()).orElse(true))
            .filter(operation -> !ended(operation, EnumSet.of(Outcome.Result.STAGE_DONE)))
            .toList();
    if (fixed.isEmpty()) {
      return Optional.empty();
    }
    if (fixed.stream().anyMatch(operation -> ended(operation, MEANT_TO_LAST))) {
      return Optional.of(new Reason("operated before", Optional.empty()));
    }
    String id = fixed.get(0).id();
    return Optional.of(
        new Reason(
            "what became of " + id + " is not stated",
            Optional.of(new MissingFact(id + "/outcome/result", "What became of " + id + "?"))));
  }

  private static boolean ended(Operation operation, Set<Outcome.Result> results) {
    return operation.outcome().map(Outcome::result).map(results::contains).orElse(false);
  }

  /** The longest rest in a cast, a brace or traction that came before. */
  private static Optional<Reason> disuse(Subject subject) {
    List<NonOperativeTreatment> rests =
        subject.caseFile().nonOperative().stream()
            .filter(treatment -> AT_REST.contains(treatment.kind()))
            .filter(treatment -> subject.knows(treatment.fromDay()))
            .toList();
    if (rests.stream().anyMatch(rest -> days(rest, subject).min() > LONG_DISUSE)) {
      return Optional.of(new Reason("at rest for more than six months", Optional.empty()));
    }
    return rests.stream().anyMatch(rest -> days(rest, subject).max() > LONG_DISUSE)
        ? Optional.of(
            new Reason(
                "perhaps at rest for more than six months",
                Optional.of(
                    new MissingFact(
                        "nonOperative/toDay", "Until when was the limb in a cast or a brace?"))))
        : Optional.empty();
  }

  /** Return how long a rest lasted; where its end is not told, up to the subject at most. */
  private static Dimension days(NonOperativeTreatment rest, Subject subject) {
    double began = rest.fromDay().max();
    double least = rest.toDay().map(day -> day.min() - began).orElse(0.0);
    double most =
        rest.toDay()
            .or(() -> begins(subject))
            .map(day -> day.max() - rest.fromDay().min())
            .orElse(Double.POSITIVE_INFINITY);
    return new Dimension(Math.max(0, least), Math.max(0, Math.max(least, most)), false, "");
  }

  private static Optional<Quantity> begins(Subject subject) {
    return subject.planned()
        ? subject.findings().stream().map(Finding::day).findFirst()
        : subject.operation().day();
  }
}
