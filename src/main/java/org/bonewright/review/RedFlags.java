package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.NerveState;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Words;
import org.bonewright.measures.infection.InfectionEvidence;
import org.bonewright.measures.infection.NormalReaction;
import org.bonewright.review.RedFlag.Kind;

/**
 * Looks for what must go to a human at once, before any word on mechanics. Common practice, no
 * source. The latest answer to each question counts.
 */
final class RedFlags {

  private static final double IRRADIATED_GY = 50;

  /** Common practice, no source; laboratories differ. */
  private static final double RAISED_CRP = 10;

  private static final String PROOF = "Proof of infection: ";

  /** A sign at the bedside that proves infection. */
  private record Proof(
      Kind kind, String words, Function<InfectionSigns, Optional<Examination>> sign) {}

  private static final List<Proof> BEDSIDE =
      List.of(
          new Proof(Kind.SINUS, "sinus down to bone or implant", InfectionSigns::sinus),
          new Proof(
              Kind.WOUND_BREAKDOWN,
              "wound broken down to bone or implant, metal may be exposed",
              InfectionSigns::woundBreakdown),
          new Proof(Kind.PUS, "pus", InfectionSigns::pus));

  private final CaseFile caseFile;
  private final List<Finding> latestFirst;
  private final List<RedFlag> flags = new ArrayList<>();

  private RedFlags(CaseFile caseFile) {
    this.caseFile = caseFile;
    this.latestFirst =
        caseFile.findings().stream()
            .sorted(Comparator.comparingDouble((Finding f) -> f.day().middle()).reversed())
            .toList();
  }

  static List<RedFlag> of(CaseFile caseFile, List<Subject> subjects) {
    RedFlags looked = new RedFlags(caseFile);
    looked.infection(subjects);
    looked.limb();
    looked.bone();
    looked.patient();
    return List.copyOf(looked.flags);
  }

  /**
   * What proves infection, as the principles read it, then what only points to it. What was found
   * after the last operation counts without a plan, too.
   */
  private void infection(List<Subject> subjects) {
    BEDSIDE.forEach(proof -> sign(proof.kind(), PROOF + proof.words(), proof.sign()));
    Stream.concat(subjects.stream(), Stream.of(Subject.now(caseFile)))
        .flatMap(subject -> new InfectionEvidence(subject).signs().stream())
        .filter(sign -> sign.present().equals(Optional.of(true)))
        .filter(sign -> BEDSIDE.stream().noneMatch(proof -> isFlaggedAs(proof, sign)))
        .map(sign -> new RedFlag(kind(sign), PROOF + sign.name(), "in the history"))
        .distinct()
        .forEach(flags::add);
    sign(Kind.FEVER, "Fever", InfectionSigns::fever);
    sign(Kind.LOCAL_SIGNS, "Local signs of infection", InfectionSigns::localSigns);
    sign(Kind.DISCHARGE, "Wound discharge", InfectionSigns::discharge);
    sign(Kind.JOINT_EFFUSION, "Effusion of a joint beside", InfectionSigns::jointEffusion);
    sign(Kind.SEQUESTRUM, "Sequestrum", InfectionSigns::sequestrum);
    latest(finding -> finding.infection().flatMap(InfectionSigns::crpMgL))
        .filter(seen -> seen.answer().min() > RAISED_CRP)
        .filter(this::countsAsRaised)
        .ifPresent(
            seen ->
                flag(
                    Kind.RAISED_CRP,
                    "C-reactive protein " + numbers(seen.answer()) + " mg/L, raised",
                    seen.finding()));
  }

  /** What was found last is told with its day, and not again as what the history proves. */
  private boolean isFlaggedAs(Proof proof, InfectionEvidence.Sign sign) {
    return proof.kind() == kind(sign)
        && latest(finding -> finding.infection().flatMap(proof.sign()))
            .filter(seen -> seen.answer() == Examination.PRESENT)
            .isPresent();
  }

  private static Kind kind(InfectionEvidence.Sign sign) {
    return switch (sign.field()) {
      case "sinus" -> Kind.SINUS;
      case "woundBreakdown" -> Kind.WOUND_BREAKDOWN;
      case "pus" -> Kind.PUS;
      case "samples" -> Kind.LIKE_SAMPLES;
      case "histology" -> Kind.HISTOLOGY;
      case "" -> Kind.FAILED_BY_INFECTION;
      default -> throw new IllegalStateException("no red flag for " + sign.name());
    };
  }

  /**
   * A CRP that an operation shortly before explains is no flag, unless it has risen again: above an
   * earlier value since that operation.
   */
  private boolean countsAsRaised(Seen<Quantity> crp) {
    return NormalReaction.isOver(crp.finding(), caseFile.operations()) || hasRisenAgain(crp);
  }

  private boolean hasRisenAgain(Seen<Quantity> crp) {
    double day = crp.finding().day().middle();
    double operated =
        caseFile.operations().stream()
            .flatMap(operation -> operation.day().stream())
            .mapToDouble(Quantity::middle)
            .filter(operation -> operation <= day)
            .max()
            .orElse(0);
    return caseFile.findings().stream()
        .filter(finding -> finding.day().middle() > operated)
        .filter(finding -> finding.day().middle() < day)
        .flatMap(finding -> finding.infection().flatMap(InfectionSigns::crpMgL).stream())
        .anyMatch(earlier -> earlier.max() < crp.answer().min());
  }

  private void limb() {
    present(Kind.NO_PULSES, "Pulses absent", Finding::pulses, e -> e == Examination.ABSENT);
    latest(Finding::skin)
        .filter(seen -> seen.answer() == Finding.Skin.OPEN)
        .ifPresent(seen -> flag(Kind.OPEN_SKIN, "Open skin over the site", seen.finding()));
    caseFile
        .injury()
        .vessel()
        .filter(e -> e == Examination.PRESENT)
        .ifPresent(
            e -> flags.add(new RedFlag(Kind.VESSEL, "Injury of a main vessel", "at the injury")));
    caseFile
        .injury()
        .compartmentSyndrome()
        .filter(e -> e == Examination.PRESENT)
        .ifPresent(
            e ->
                flags.add(
                    new RedFlag(
                        Kind.COMPARTMENT_SYNDROME, "Compartment syndrome", "at the injury")));
    nerve();
  }

  private void nerve() {
    Optional<NerveState> atInjury =
        caseFile.injury().nerve().filter(n -> n.function() == NerveState.Function.COMPLETE_PALSY);
    latest(Finding::nerve)
        .filter(seen -> seen.answer().function() == NerveState.Function.COMPLETE_PALSY)
        .filter(seen -> atInjury.map(n -> n.name() != seen.answer().name()).orElse(true))
        .ifPresent(
            seen ->
                flag(
                    Kind.NEW_PALSY,
                    "Complete palsy of the "
                        + Words.of(seen.answer().name())
                        + " nerve that the injury did not cause",
                    seen.finding()));
  }

  private void bone() {
    present(
        Kind.TUMOUR, "Tumour suspected", Finding::tumourSuspected, e -> e == Examination.PRESENT);
    latest(Finding::radiationGy)
        .filter(seen -> seen.answer().max() >= IRRADIATED_GY)
        .ifPresent(
            seen ->
                flag(
                    Kind.IRRADIATED,
                    "Irradiated bone, " + numbers(seen.answer()) + " Gy",
                    seen.finding()));
  }

  private void patient() {
    if (caseFile.patient().skeletallyMature().equals(Optional.of(Answer.NO))) {
      flags.add(
          new RedFlag(Kind.STILL_GROWING, "Growth has not ended: outside the scope", "patient"));
    }
    if (caseFile.patient().pregnant().equals(Optional.of(Answer.YES))) {
      flags.add(new RedFlag(Kind.PREGNANCY, "Pregnancy", "patient"));
    }
    if (caseFile.patient().implantAllergy().equals(Optional.of(Examination.PRESENT))) {
      flags.add(new RedFlag(Kind.ALLERGY, "Proven implant allergy", "patient"));
    }
    boolean bleeding =
        latest(finding -> finding.host().flatMap(Host::drugs))
            .map(seen -> seen.answer().contains(Host.Drug.ANTICOAGULANT))
            .orElse(false);
    if (bleeding && !caseFile.plans().isEmpty()) {
      flags.add(
          new RedFlag(Kind.ANTICOAGULANT, "Anticoagulant, operation planned", "latest drug list"));
    }
    boolean examined =
        caseFile.findings().stream()
            .flatMap(finding -> finding.infection().stream())
            .anyMatch(InfectionSigns::tellsSomething);
    if (!examined && !caseFile.operations().isEmpty() && !caseFile.plans().isEmpty()) {
      flags.add(
          new RedFlag(
              Kind.INFECTION_NOT_LOOKED_FOR,
              "Key data missing: no examination for infection on file",
              "findings"));
    }
  }

  private record Seen<T>(T answer, Finding finding) {}

  private <T> Optional<Seen<T>> latest(Function<Finding, Optional<T>> question) {
    return latestFirst.stream()
        .flatMap(f -> question.apply(f).stream().map(answer -> new Seen<>(answer, f)))
        .findFirst();
  }

  private void sign(Kind kind, String what, Function<InfectionSigns, Optional<Examination>> sign) {
    present(
        kind, what, finding -> finding.infection().flatMap(sign), e -> e == Examination.PRESENT);
  }

  private void present(
      Kind kind,
      String what,
      Function<Finding, Optional<Examination>> question,
      Predicate<Examination> bad) {
    latest(question)
        .filter(seen -> bad.test(seen.answer()))
        .ifPresent(seen -> flag(kind, what, seen.finding()));
  }

  private void flag(Kind kind, String what, Finding finding) {
    flags.add(new RedFlag(kind, what, "found on day " + numbers(finding.day())));
  }

  private static String numbers(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }
}
