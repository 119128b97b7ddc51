package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a revision makes the bone more stable than the operation before it did. */
final class StabilityAdded implements Measure {

  private static final String MORE = "more";
  private static final String DYNAMISED = "dynamised";
  private static final String NOTHING = "nothing";

  @Override
  public Definition definition() {
    return new Definition(
        "stability-added",
        "Stability added",
        Definition.words(MORE, DYNAMISED, NOTHING),
        "against the last operation meant to unite the bone: more for another kind of implant or"
            + " concept, a nail thicker by 1 mm or with more bolts, another plate or strut, a longer"
            + " or thicker plate, more hold, or a line newly compressed, and for a first implant;"
            + " dynamised when bolts are taken out and no more; else nothing. How much stiffer it"
            + " becomes is not computed",
        List.of("operations/fixation", "operations/removed", "operations/compression", "concept"),
        "what counts is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    String less = FactorChange.boltsOut(scene) ? DYNAMISED : NOTHING;
    MissingFact missing =
        scene.missing(
            "fixation",
            "What makes the bone more stable than before: a thicker nail, another plate, more screws,"
                + " compression?");
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      Reading held = scene.read("main-implant-used");
      return scene.certainly("main-implant-used", "yes")
          ? Reading.word(MORE, "the first implant")
          : scene.certainly("main-implant-used", "no")
              ? Reading.word(less, "no implant")
              : Reading.words(
                  Set.of(MORE, less),
                  Kind.FACT,
                  held.working(),
                  held.missing().toArray(MissingFact[]::new));
    }
    String against = "against " + then.get().operation().id();
    Optional<Boolean> stabler = new FactorChange(then.get(), scene).stabler();
    return stabler
        .map(yes -> Reading.word(yes ? MORE : less, against))
        .orElseGet(
            () ->
                Reading.words(
                    Set.of(MORE, less), Kind.FACT, against + ": cannot be told", missing));
  }
}
