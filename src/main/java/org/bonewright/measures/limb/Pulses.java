package org.bonewright.measures.limb;

import java.util.List;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The pulses beyond the fracture, as last felt for. */
final class Pulses implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "pulses",
        "Pulses of foot or hand",
        Definition.words("present", "absent", "not-done"),
        "the latest finding that was known",
        List.of("findings/pulses"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .latest(Finding::pulses)
        .filter(felt -> felt != Examination.UNKNOWN)
        .map(felt -> Reading.word(Words.written(felt), "as last found"))
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missingInCase(
                        "findings/pulses", "Are the pulses of the foot or hand palpable?")));
  }
}
