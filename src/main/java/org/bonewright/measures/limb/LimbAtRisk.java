package org.bonewright.measures.limb;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;

/** Whether skin and blood flow deserve a look before metal goes in. */
final class LimbAtRisk implements Measure {

  private static final double OLD = 60;

  @Override
  public Definition definition() {
    return new Definition(
        "limb-at-risk",
        "Skin or blood flow may be poor",
        Definition.yesOrNo(),
        "yes for the tibia, an open injury, an open wound or discharge, diabetes, smoking, and from"
            + " 60 years on in the leg; no where none of these is so",
        List.of(
            "bone/name",
            "injury/openGrade",
            "findings/skin",
            "findings/infection",
            "findings/host",
            "patient/ageYears"),
        "common practice, no source");
  }

  /**
   * One reason.
   *
   * @param there whether it is there, where told
   * @param ask what to ask where it is not told
   */
  private record Reason(Optional<Boolean> there, MissingFact ask) {}

  @Override
  public Reading take(Scene scene) {
    if (scene.boneName() == BoneName.TIBIA) {
      return Reading.word("yes", "the tibia lies under the skin");
    }
    List<Reason> reasons = reasons(scene);
    if (reasons.stream().anyMatch(reason -> reason.there().equals(Optional.of(true)))) {
      return Reading.word("yes", "wound, age, diabetes or smoking");
    }
    List<MissingFact> open =
        reasons.stream().filter(r -> r.there().isEmpty()).map(Reason::ask).toList();
    return open.isEmpty()
        ? Reading.word("no", "no reason")
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "not all is told", open.toArray(MissingFact[]::new));
  }

  private static List<Reason> reasons(Scene scene) {
    Subject subject = scene.subject();
    CaseFile file = subject.caseFile();
    List<Reason> reasons = new ArrayList<>();
    reasons.add(
        new Reason(
            file.injury().openGrade().map(grade -> grade != Injury.OpenGrade.NONE),
            scene.missingInCase("injury/openGrade", "Was the injury open, and of which grade?")));
    reasons.add(
        new Reason(
            discharging(subject)
                ? Optional.of(true)
                : subject.latest(Finding::skin).map(skin -> skin == Finding.Skin.OPEN),
            scene.missingInCase("findings/skin", "How is the skin over the site?")));
    reasons.add(
        new Reason(
            subject
                .latest(finding -> finding.host().flatMap(Host::diabetes))
                .filter(answer -> answer != Answer.UNKNOWN)
                .map(answer -> answer == Answer.YES),
            scene.missingInCase("findings/host/diabetes", "Has the patient diabetes?")));
    reasons.add(
        new Reason(
            subject
                .latest(finding -> finding.host().flatMap(Host::smoking))
                .filter(smoking -> smoking != Host.Smoking.UNKNOWN)
                .map(smoking -> smoking == Host.Smoking.CURRENT),
            scene.missingInCase(
                "findings/host/smoking", "Does the patient smoke: never, stopped, current?")));
    if (scene.boneName() == BoneName.FEMUR) {
      reasons.add(
          new Reason(
              file.patient()
                  .ageYears()
                  .filter(age -> age.min() >= OLD || age.max() < OLD)
                  .map(age -> age.min() >= OLD),
              scene.missingInCase("patient/ageYears", "How old is the patient?")));
    }
    return reasons;
  }

  /** Each sign as it was last looked for: a later finding that does not name it clears nothing. */
  private static boolean discharging(Subject subject) {
    return present(subject, InfectionSigns::discharge)
        || present(subject, InfectionSigns::woundBreakdown)
        || present(subject, InfectionSigns::sinus);
  }

  private static boolean present(
      Subject subject, Function<InfectionSigns, Optional<Examination>> sign) {
    return subject
        .latest(finding -> finding.infection().flatMap(sign))
        .equals(Optional.of(Examination.PRESENT));
  }
}
