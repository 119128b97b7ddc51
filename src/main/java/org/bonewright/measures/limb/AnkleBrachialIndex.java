package org.bonewright.measures.limb;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Pressure at the ankle over that at the arm, as last measured. */
final class AnkleBrachialIndex implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "ankle-brachial-index",
        "Ankle-brachial pressure index",
        Definition.ratio(),
        "the latest value that was known",
        List.of("findings/ankleBrachialIndex"),
        "getABI study, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing =
        scene.missingInCase(
            "findings/ankleBrachialIndex", "What is the ankle-brachial pressure index?");
    return scene
        .subject()
        .latest(Finding::ankleBrachialIndex)
        .map(index -> Reading.number(Dimension.stated(index, ""), "as measured", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
