package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** For how long no antibiotic was given before sampling. */
final class AntibioticFreeDays implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "antibiotic-free-days",
        "Days without antibiotics",
        new Definition.Domain.Numbers("d", "days", 0, Double.POSITIVE_INFINITY, 0),
        "the latest number that was known",
        List.of("findings/infection/antibioticFreeDays"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missingInCase(
            "findings/infection/antibioticFreeDays",
            "For how many days has the patient had no antibiotics?");
    return scene
        .subject()
        .latest(finding -> finding.infection().flatMap(InfectionSigns::antibioticFreeDays))
        .map(days -> Reading.number(Dimension.stated(days, ""), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
