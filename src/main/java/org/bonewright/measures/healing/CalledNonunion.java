package org.bonewright.measures.healing;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone is called a nonunion while the metal is whole and in place. */
final class CalledNonunion implements Measure {

  private static final String LABEL = "union-label-now";
  private static final String METAL = "metal-holds-now";

  @Override
  public Definition definition() {
    return new Definition(
        "nonunion-called-metal-whole",
        "Called a nonunion while the metal is whole",
        Definition.yesOrNo(),
        "yes when it is called a nonunion and the metal is whole and in place; no when either is"
            + " certainly not so",
        List.of(LABEL, METAL),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Reading label = scene.read(LABEL);
    Reading metal = scene.read(METAL);
    String working = "called " + label.shown() + ", metal whole: " + metal.shown();
    if (!scene.possibly(LABEL, "nonunion") || !scene.possibly(METAL, "yes")) {
      return Reading.word("no", working);
    }
    return scene.certainly(LABEL, "nonunion") && scene.certainly(METAL, "yes")
        ? Reading.word("yes", working)
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            working,
            Reading.missingOf(label, metal).toArray(MissingFact[]::new));
  }
}
