package org.bonewright.measures.line;

import java.util.List;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The class of fracture pattern that decides how a line is bridged or compressed. */
final class PatternClass implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "pattern-class",
        "Pattern",
        Definition.words("simple", "wedge", "multifragmentary", "defect"),
        "transverse, oblique and spiral lines are simple; multifragmentary and segmental ones are"
            + " multifragmentary; a missing piece of shaft is a defect. The pattern of what has not"
            + " united counts where a finding states it, else that of the injury",
        List.of("findings/pattern", "injury/pattern"),
        "usual classification of shaft fractures; segmental as multifragmentary is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    boolean cutOut =
        scene.zoneAsFound().length().map(l -> l.min() > 0).orElse(false)
            && scene.zone().length().map(l -> l.max() <= 0).orElse(false);
    boolean closed = scene.read("gap-widest") instanceof Reading.Amount gap && gap.max() <= 5;
    if (cutOut && closed) {
      return Reading.word("simple", "the zone is cut out, two ends meet");
    }
    return scene
        .subject()
        .latest(Finding::pattern)
        .or(() -> scene.subject().caseFile().injury().pattern())
        .map(PatternClass::of)
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missingInCase(
                        "injury/pattern",
                        "What was the pattern: transverse, oblique, spiral, wedge or"
                            + " multifragmentary?")));
  }

  private static Reading of(Injury.Pattern pattern) {
    String word =
        switch (pattern) {
          case TRANSVERSE, OBLIQUE, SPIRAL -> "simple";
          case WEDGE -> "wedge";
          case MULTIFRAGMENTARY, SEGMENTAL -> "multifragmentary";
          case SEGMENTAL_DEFECT -> "defect";
        };
    return Reading.word(word, Words.of(pattern));
  }
}
