package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much of the circumference is stripped where an onlay strut is put on. */
final class StrippedAtStrut implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "stripped-at-strut",
        "Stripped where the strut lies",
        Definition.percent(),
        "share of the circumference stripped of soft tissue in the step that puts an onlay strut"
            + " on, as stated",
        List.of("operations/strippedPercent", "operations/fixation/where"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    Optional<Operation> by =
        steps.stream().filter(step -> putsOnlayStrut(step)).reduce((first, second) -> second);
    MissingFact missing =
        scene.missing(
            "strippedPercent", "What share of the circumference is stripped of soft tissue?");
    if (by.isEmpty()) {
      return steps.stream().allMatch(step -> step.fixation().isPresent())
          ? new Reading.None("no onlay strut")
          : Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    Optional<Quantity> stripped = by.get().strippedPercent();
    return stripped
        .map(q -> Reading.number(Dimension.stated(q, ""), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private static boolean putsOnlayStrut(Operation step) {
    return Biology.struts(List.of(step)).stream()
        .anyMatch(strut -> strut.where() == Strut.Where.ONLAY);
  }
}
