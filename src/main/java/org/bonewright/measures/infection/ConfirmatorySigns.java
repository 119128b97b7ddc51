package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many confirmatory signs of fracture-related infection were known. */
final class ConfirmatorySigns implements Measure {

  private static final String PLACE = "findings/infection/";

  @Override
  public Definition definition() {
    return new Definition(
        "confirmatory-signs",
        "Confirmatory signs of infection",
        new Definition.Domain.Numbers("1", "", 0, 6, 1),
        "count of: sinus or fistula; wound breakdown to bone or implant; pus; the same organism from"
            + " two or more deep samples; organisms, or more than five neutrophils per high-power"
            + " field, on histology; an operation that failed by infection. A sign counts until an"
            + " operation with debridement and antibiotics followed and it was looked for again in"
            + " vain. A test not done is an answer; a bedside sign not examined, and what is unknown"
            + " or not recorded, may be a sign or not",
        List.of("findings/infection", "operations/outcome/mode", "operations/infectionCare"),
        "Metsemakers et al., Injury 2018; Govaert et al., J Orthop Trauma 2020");
  }

  @Override
  public Reading take(Scene scene) {
    List<String> present = new ArrayList<>();
    List<MissingFact> missing = new ArrayList<>();
    String place =
        scene.subject().planned() ? PLACE : "findings before " + scene.operation().id() + "/";
    for (InfectionEvidence.Sign sign : new InfectionEvidence(scene.subject()).signs()) {
      if (sign.present().isEmpty()) {
        missing.add(scene.missingInCase(place + sign.field(), sign.question()));
      } else if (sign.present().get()) {
        present.add(sign.name());
      }
    }
    String working = present.isEmpty() ? "none recorded" : String.join(", ", present);
    return new Reading.Amount(
        present.size(), present.size() + missing.size(), Kind.FACT, working, missing);
  }
}
