package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the remaining defect takes part of the circumference or all of it. */
final class DefectAcross implements Measure {

  private static final double HALF = 50;

  @Override
  public Definition definition() {
    return new Definition(
        "defect-across",
        "Extent of the defect round the bone",
        Definition.words("part", "whole"),
        "part when at most half of the circumference is missing, else whole; as stated for the site,"
            + " unless the ends are cut back; then, and where that is not stated, what the contact"
            + " at the end of the operation leaves",
        List.of("findings/circumferenceMissingPercent", "operations/resection", "contact-percent"),
        "one half is common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    boolean resects =
        scene.subject().steps().stream()
            .anyMatch(step -> step.resection().map(cut -> !cut.isEmpty()).orElse(true));
    Optional<Quantity> stated = scene.subject().latest(Finding::circumferenceMissingPercent);
    if (!resects && stated.isPresent()) {
      String working = Numbers.shown(stated.get()) + " % of the circumference missing";
      return word(
          stated.get().min(),
          stated.get().max(),
          working,
          scene.missingInCase(
              "findings/circumferenceMissingPercent",
              "What share of the circumference is missing at the site?"));
    }
    Reading contact = scene.read("contact-percent");
    return contact instanceof Reading.Amount amount
        ? word(
            100 - amount.max(),
            100 - amount.min(),
            amount.shown() + " % in contact",
            contact.missing().toArray(MissingFact[]::new))
        : new Reading.Unknown(contact.missing());
  }

  private static Reading word(double min, double max, String working, MissingFact... missing) {
    if (max <= HALF) {
      return Reading.word("part", working);
    }
    return min > HALF
        ? Reading.word("whole", working)
        : Reading.words(Set.of("part", "whole"), Kind.FACT, working, missing);
  }
}
