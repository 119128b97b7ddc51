package org.bonewright.measures.infection;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the site has held an implant or had an open wound, and so may be infected. */
final class SiteAtRisk implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "site-at-risk",
        "Implant or open wound at the site before",
        Definition.yesOrNo(),
        "yes when an earlier operation put in an implant, or did not say, or the injury was open",
        List.of("operations/fixation", "injury/openGrade"),
        "Metsemakers et al., Injury 2018, for the scope of fracture-related infection");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.subject().isRevision()) {
      return Reading.word("yes", "operated before");
    }
    Optional<Injury.OpenGrade> grade = scene.subject().caseFile().injury().openGrade();
    if (grade.isEmpty()) {
      return Reading.unknown(
          scene.missingInCase("injury/openGrade", "Was the injury open, and of which grade?"));
    }
    return grade.get() == Injury.OpenGrade.NONE
        ? Reading.word("no", "closed injury, no earlier implant")
        : Reading.word("yes", "open injury");
  }
}
