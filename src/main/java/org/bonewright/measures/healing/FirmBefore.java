package org.bonewright.measures.healing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the fracture was still held: metal whole and no motion felt. */
final class FirmBefore implements Measure {

  private final Measure metal = new MetalHolds("metal-holds-before", Stretch.BEFORE);
  private final Measure motion = Diagnosis.motionFelt("motion-felt-before", Stretch.BEFORE);

  @Override
  public Definition definition() {
    return new Definition(
        "firm-before",
        "Still held before",
        Definition.yesOrNo(),
        "no when the metal had failed or motion was felt at the site; yes when neither; "
            + Stretch.BEFORE.inWords(),
        List.of("operations/outcome/mode", "findings/motionAtSite"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Reading held = metal.take(scene);
    Reading moves = motion.take(scene);
    if (is(held, "no") || is(moves, "yes")) {
      return Reading.word("no", is(held, "no") ? held.working() : "motion felt");
    }
    Set<String> possible = new HashSet<>(Set.of("yes"));
    if (!is(held, "yes") || !is(moves, "no")) {
      possible.add("no");
    }
    return Reading.words(
        possible,
        Kind.FACT,
        "metal and motion",
        Reading.missingOf(held, moves).toArray(MissingFact[]::new));
  }

  private static boolean is(Reading reading, String word) {
    return reading instanceof Reading.Word known && known.possible().equals(Set.of(word));
  }
}
