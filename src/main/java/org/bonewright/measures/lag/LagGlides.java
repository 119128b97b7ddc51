package org.bonewright.measures.lag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the thread of every lag screw leaves the near fragment free. */
final class LagGlides implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "lag-glides",
        "Lag screws glide in the near fragment",
        Definition.yesOrNo(),
        "yes when every lag screw has a gliding hole, or a shank without thread, in the fragment"
            + " under its head; no when one has not",
        List.of("operations/fixation/glidingHole"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    List<LagScrew> screws = LagScrews.of(scene);
    if (screws.isEmpty()) {
      return LagScrews.none(scene);
    }
    List<MissingFact> open = new ArrayList<>();
    for (LagScrew screw : screws) {
      if (screw.glidingHole().equals(Optional.of(Answer.NO))) {
        return Reading.word("no", screw.id() + " grips both fragments");
      }
      if (!screw.glidingHole().equals(Optional.of(Answer.YES))) {
        open.add(
            LagScrews.missing(
                scene,
                screw,
                "glidingHole",
                "Was the near hole of "
                    + screw.id()
                    + " over-drilled, or its shank without thread there?"));
      }
    }
    return open.isEmpty()
        ? Reading.word("yes", "as stated")
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "not stated", open.toArray(MissingFact[]::new));
  }
}
