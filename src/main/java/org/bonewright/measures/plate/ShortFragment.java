package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.Bone;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much shaft the shorter main fragment has. */
final class ShortFragment implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "short-fragment-shaft",
        "Shaft of the shorter fragment, in diameters",
        Definition.ratio(),
        "length from the edge of the zone to the metaphysis, divided by the outer diameter at that"
            + " edge, of the main fragment where that is less. The metaphysis is taken as long as it"
            + " is wide, and where that is not stated as usual for the bone",
        List.of(
            "injury/zone",
            "findings/zone",
            "bone/lengthMm",
            "bone/metaphysealWidthMm",
            "bone/sections"),
        "square rule for the metaphysis; usual lengths from memory");
  }

  @Override
  public Reading take(Scene scene) {
    return Fragments.of(scene)
        .map(
            fragments ->
                Reading.number(
                    fragments.least(),
                    "near "
                        + fragments.near().numbers()
                        + ", far "
                        + fragments.far().numbers()
                        + " diameters",
                    vague(scene).toArray(MissingFact[]::new)))
        .orElseGet(() -> Reading.unknown(PlateQuestions.zone(scene)));
  }

  private static List<MissingFact> vague(Scene scene) {
    Bone bone = scene.subject().caseFile().bone();
    List<MissingFact> vague = new ArrayList<>();
    if (bone.lengthMm().map(length -> !length.isExact()).orElse(true)) {
      vague.add(scene.missingInCase("bone/lengthMm", "How long is the bone, in mm?"));
    }
    if (bone.metaphysealWidthMm().map(width -> !width.isExact()).orElse(true)) {
      vague.add(
          scene.missingInCase(
              "bone/metaphysealWidthMm",
              "How wide is the metaphysis nearest the fracture, in mm?"));
    }
    if (PlateQuestions.open(scene.zone().centre()) || PlateQuestions.open(scene.zone().length())) {
      vague.add(PlateQuestions.zone(scene));
    }
    if (vague.isEmpty()) {
      vague.add(PlateQuestions.width(scene));
    }
    return vague;
  }
}
