package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Which share of the circumference was stripped of soft tissue. */
final class StrippedPercent implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "stripped-percent",
        "Stripped circumference",
        Definition.percent(),
        "as stated of the operation that fixed the line",
        List.of("operations/strippedPercent"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missingOfFixing(
            "strippedPercent", "What share of the circumference is stripped of soft tissue?");
    return scene
        .fixing()
        .strippedPercent()
        .map(
            share ->
                (Reading)
                    new Reading.Amount(
                        share.min(),
                        share.max(),
                        Kind.FACT,
                        "as stated",
                        share.isExact() ? List.of() : List.of(missing)))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
