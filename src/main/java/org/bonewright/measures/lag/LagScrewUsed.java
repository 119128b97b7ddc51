package org.bonewright.measures.lag;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the subject puts in a lag screw. */
final class LagScrewUsed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "lag-screw-put-in",
        "A lag screw put in",
        Definition.yesOrNo(),
        "yes when the operation puts a lag screw across the line; one that an earlier operation left"
            + " is not counted",
        List.of("operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<LagScrew> screws = LagScrews.of(scene);
    if (!screws.isEmpty()) {
      return Reading.word("yes", screws.size() + " put in");
    }
    return LagScrews.told(scene)
        ? Reading.word("no", "no lag screw put in")
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "the implants are not stated", LagScrews.untold(scene));
  }
}
