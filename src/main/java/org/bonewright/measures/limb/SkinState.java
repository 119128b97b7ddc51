package org.bonewright.measures.limb;

import java.util.List;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The skin over the site, as last found. */
final class SkinState implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "skin",
        "Skin over the site",
        Definition.words("intact", "sound-scar", "tethered-scar", "grafted", "flap", "open"),
        "the latest finding that was known",
        List.of("findings/skin"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .latest(Finding::skin)
        .map(skin -> Reading.word(Words.written(skin), "as last found"))
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missingInCase(
                        "findings/skin",
                        "How is the skin over the site: intact, scarred, tethered, grafted, under a"
                            + " flap or open?")));
  }
}
