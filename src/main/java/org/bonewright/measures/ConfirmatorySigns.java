package org.bonewright.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.SampleResult;

/** How many confirmatory signs of fracture-related infection were known. */
final class ConfirmatorySigns implements Measure {

  private static final String PLACE = "findings/infection/";

  @Override
  public Definition definition() {
    return new Definition(
        "confirmatory-signs",
        "Confirmatory signs of infection",
        new Definition.Domain.Numbers("1", "", 0, 5, 1),
        "count of: sinus or fistula; wound breakdown to bone or implant; pus; the same organism from"
            + " two or more deep samples; organisms, or more than five neutrophils per high-power"
            + " field, on histology. The latest answer before the operation counts. Not done is an"
            + " answer; unknown or not recorded may be a sign or not",
        List.of("findings/infection"),
        "Metsemakers et al., Injury 2018; Govaert et al., J Orthop Trauma 2020");
  }

  @Override
  public Reading take(Scene scene) {
    Count count = new Count(scene);
    count.sign("sinus", InfectionSigns::sinus, "Is there a sinus down to bone or implant?");
    count.sign(
        "woundBreakdown",
        InfectionSigns::woundBreakdown,
        "Has the wound broken down to bone or implant?");
    count.sign("pus", InfectionSigns::pus, "Is there, or was there, pus?");
    count.add(
        "two samples with the same organism",
        count.latest(InfectionSigns::samples).flatMap(ConfirmatorySigns::sameOrganism),
        "samples",
        "How many deep samples were taken, and in how many did the same organism grow?");
    count.add(
        "histology",
        count.latest(InfectionSigns::histology).flatMap(ConfirmatorySigns::positive),
        "histology",
        "What did histology of deep tissue show (not done is an answer)?");
    return count.reading();
  }

  private static Optional<Boolean> sameOrganism(SampleResult result) {
    if (result.taken().max() < 2) {
      return Optional.of(false);
    }
    return result
        .sameOrganism()
        .flatMap(
            same ->
                same.min() >= 2
                    ? Optional.of(true)
                    : same.max() < 2 ? Optional.of(false) : Optional.empty());
  }

  private static Optional<Boolean> positive(InfectionSigns.Histology histology) {
    return switch (histology) {
      case ORGANISMS, NEUTROPHILS_ABOVE_5 -> Optional.of(true);
      case NEGATIVE, NOT_DONE -> Optional.of(false);
      case UNKNOWN -> Optional.empty();
    };
  }

  private static final class Count {
    private final Scene scene;
    private final List<String> present = new ArrayList<>();
    private final List<MissingFact> missing = new ArrayList<>();

    Count(Scene scene) {
      this.scene = scene;
    }

    <T> Optional<T> latest(Function<InfectionSigns, Optional<T>> question) {
      Function<Finding, Optional<T>> asked = finding -> finding.infection().flatMap(question);
      return scene.subject().latest(asked);
    }

    void sign(String field, Function<InfectionSigns, Optional<Examination>> sign, String question) {
      Optional<Boolean> answer =
          latest(sign)
              .flatMap(
                  e ->
                      e == Examination.UNKNOWN
                          ? Optional.empty()
                          : Optional.of(e == Examination.PRESENT));
      add(field.equals("woundBreakdown") ? "wound breakdown" : field, answer, field, question);
    }

    void add(String name, Optional<Boolean> answer, String field, String question) {
      if (answer.isEmpty()) {
        missing.add(scene.missingInCase(place() + field, question));
      } else if (answer.get()) {
        present.add(name);
      }
    }

    private String place() {
      return scene.subject().planned() ? PLACE : "findings before " + scene.operation().id() + "/";
    }

    Reading reading() {
      String working = present.isEmpty() ? "none recorded" : String.join(", ", present);
      return new Reading.Amount(
          present.size(), present.size() + missing.size(), Kind.FACT, working, missing);
    }
  }
}
