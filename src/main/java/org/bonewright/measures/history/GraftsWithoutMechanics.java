package org.bonewright.measures.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How often graft was tried before on mechanics that stayed the same. */
final class GraftsWithoutMechanics implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "grafts-without-mechanics-before",
        "Earlier grafts on unchanged mechanics",
        Definition.count(1),
        "earlier operations after the first that put in graft and changed none of concept, hold,"
            + " length, gap and nail",
        List.of("operations/biology", "mechanics-changed", "graft-makeup"),
        "what counts as a change is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<String> certain = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    Optional<Scene> earlier = scene.failedBefore();
    while (earlier.isPresent()) {
      Scene then = earlier.get();
      boolean grafted =
          then.read("graft-makeup") instanceof Reading.Word word
              && !word.possible().contains("nothing");
      boolean maybeGrafted = grafted || then.read("graft-makeup") instanceof Reading.Unknown;
      if (grafted && then.certainly("mechanics-changed", "no")) {
        certain.add(then.operation().id());
      } else if (maybeGrafted && then.possibly("mechanics-changed", "no")) {
        String id = then.operation().id();
        open.add(
            scene.missingInCase(
                id + "/biology", "Did " + id + " add graft, and change nothing of the fixation?"));
      }
      earlier = then.failedBefore();
    }
    return new Reading.Amount(
        certain.size(),
        certain.size() + open.size(),
        Kind.FACT,
        certain.isEmpty() ? "none" : String.join(", ", certain),
        open);
  }
}
