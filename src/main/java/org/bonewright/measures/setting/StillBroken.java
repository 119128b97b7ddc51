package org.bonewright.measures.setting;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the bone had not united when the subject began. */
final class StillBroken implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "still-broken",
        "Not united before",
        Definition.yesOrNo(),
        "no when the last diagnosis before it is united; yes for any other diagnosis, and where"
            + " nothing was operated on before",
        List.of("findings/diagnosis", "operations"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Finding.Diagnosis> diagnosis = scene.subject().latest(Finding::diagnosis);
    if (diagnosis.isPresent()) {
      return diagnosis.get() == Finding.Diagnosis.UNITED
          ? Reading.word("no", "united")
          : Reading.word("yes", Words.of(diagnosis.get()));
    }
    return scene.doneBefore().isEmpty()
        ? Reading.word("yes", "a fresh fracture")
        : Reading.unknown(scene.missingInCase("findings/diagnosis", "Has the bone united?"));
  }
}
