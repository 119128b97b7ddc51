package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The share of the circumference that is missing opposite the plate. */
final class FarDefect implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "far-defect-percent",
        "Missing far cortex",
        Definition.percent(),
        "as stated; where only the contact is stated, anything from zero to what the contact leaves",
        List.of("operations/reduction/farDefectPercent", "contact-percent"),
        "the bound by contact is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missingOfFixing(
            "reduction/farDefectPercent",
            "What share of the circumference was missing opposite the plate?");
    Optional<Quantity> stated = scene.reduction().flatMap(Reduction::farDefectPercent);
    if (stated.isPresent()) {
      return new Reading.Amount(
          stated.get().min(),
          stated.get().max(),
          Kind.FACT,
          "as stated",
          stated.get().isExact() ? List.of() : List.of(missing));
    }
    Optional<Quantity> contact = scene.reduction().flatMap(Reduction::contactPercent);
    return contact
        .map(
            c ->
                (Reading)
                    new Reading.Amount(
                        0,
                        100 - c.min(),
                        Kind.ASSUMED,
                        "at most what " + Numbers.shown(c) + " % contact leaves",
                        c.min() == 100 ? List.of() : List.of(missing)))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
