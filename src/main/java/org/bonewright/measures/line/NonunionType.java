package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The vitality of a fracture that has not united, as last found before the operation. */
final class NonunionType implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nonunion-type",
        "Type of nonunion",
        Definition.words("hypertrophic", "oligotrophic", "atrophic", "defect"),
        "as last stated before the operation, any of them where that is uncertain; none where the last word was united or healing, and"
            + " before a first fixation where nothing was said of delayed union or nonunion",
        List.of("findings/vitality", "findings/diagnosis", "setting"),
        "Weber and Čech, Pseudarthrosis, 1973 and 1976, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact type =
        scene.missingInCase(
            "findings/vitality",
            "Of which type was the nonunion: hypertrophic, oligotrophic, atrophic or a defect?");
    boolean notUnited = false;
    for (Finding finding : scene.subject().findings()) {
      if (finding.vitality().equals(Optional.of(Finding.Vitality.UNCERTAIN))) {
        return Reading.unknown(type);
      }
      if (finding.vitality().isPresent()) {
        return Reading.word(
            Words.written(finding.vitality().get()),
            "as found on day " + Math.round(finding.day().middle()));
      }
      if (finding.diagnosis().isPresent()) {
        if (heals(finding.diagnosis().get()) && !notUnited) {
          return new Reading.None("united or healing when last seen");
        }
        notUnited = true;
      }
    }
    if (!notUnited && scene.certainly("setting", "fresh")) {
      return new Reading.None("a first fixation, no nonunion found");
    }
    return Reading.unknown(type);
  }

  private static boolean heals(Finding.Diagnosis diagnosis) {
    return diagnosis == Finding.Diagnosis.UNITED || diagnosis == Finding.Diagnosis.HEALING;
  }
}
