package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Which share of the cortex opposite the plate is in contact, bounded by what is known of all. */
final class FarContact implements Measure {

  private static final double HALF = 50;

  @Override
  public Definition definition() {
    return new Definition(
        "far-contact-percent",
        "Contact opposite the plate",
        Definition.percent(),
        "share of the half of the circumference away from the plate that is in contact: of a contact"
            + " of the whole circumference, at least what the half under the plate cannot hold, at"
            + " most all of it",
        List.of("contact-percent"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (!(scene.read("contact-percent") instanceof Reading.Amount contact)) {
      return new Reading.Unknown(scene.read("contact-percent").missing());
    }
    double least = Math.max(0, contact.min() - HALF) / HALF * 100;
    double most = Math.min(HALF, contact.max()) / HALF * 100;
    MissingFact opposite =
        scene.missingOfFixing(
            "reduction/contactPercent",
            "Was at least half of the cortex opposite the plate in contact at the end?");
    return new Reading.Amount(
        least,
        most,
        Kind.ASSUMED,
        "contact of the whole circumference " + contact.shown() + " %",
        least == most ? List.of() : List.of(opposite));
  }
}
