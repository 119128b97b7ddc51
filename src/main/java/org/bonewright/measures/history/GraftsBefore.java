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

/** How many operations before put in graft. */
final class GraftsBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "grafts-before",
        "Grafts before",
        Definition.count(1),
        "operations before that put in graft, and were meant to unite the bone; one that does not"
            + " tell may have",
        List.of("graft-makeup"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<String> certain = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    Optional<Scene> earlier = scene.failedBefore();
    while (earlier.isPresent()) {
      Scene then = earlier.get();
      String id = then.operation().id();
      if (!then.possibly("graft-makeup", "nothing")) {
        certain.add(id);
      } else if (!then.certainly("graft-makeup", "nothing")) {
        open.add(scene.missingInCase(id + "/biology", "Did " + id + " add graft?"));
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
