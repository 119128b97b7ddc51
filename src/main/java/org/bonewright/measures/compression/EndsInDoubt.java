package org.bonewright.measures.compression;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone ends are so likely dead or sealed that they must be prepared. */
final class EndsInDoubt implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "ends-in-doubt",
        "Ends dead, sealed or infected",
        Definition.yesOrNo(),
        "yes for an atrophic nonunion and where a sign confirms infection; else no",
        List.of("nonunion-type", "confirmatory-signs"),
        "Brinker and O'Connor, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Reading type = scene.read("nonunion-type");
    if (scene.certainly("nonunion-type", "atrophic")) {
      return Reading.word("yes", "atrophic nonunion");
    }
    Reading signs = scene.read("confirmatory-signs");
    if (signs instanceof Reading.Amount count && count.min() >= 1) {
      return Reading.word("yes", "infection confirmed: " + signs.working());
    }
    boolean mayBeInfected = !(signs instanceof Reading.Amount count) || count.max() >= 1;
    if (!scene.possibly("nonunion-type", "atrophic") && !mayBeInfected) {
      return Reading.word("no", "neither atrophic nor infected");
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        "type " + type.shown() + ", signs of infection " + signs.shown(),
        Reading.missingOf(type, signs).toArray(MissingFact[]::new));
  }
}
