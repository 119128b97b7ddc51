package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much of the canal the nail of the operation before filled. */
final class FailedNailFill implements Measure {

  static final String ID = "nail-fill-before";

  @Override
  public Definition definition() {
    return new Definition(
        ID,
        "Canal fill of the nail before",
        Definition.ratio(),
        "canal fill as it was at the last operation that was meant to unite the bone",
        List.of("nail-fill"),
        "Millar et al., J Orthop Trauma 2018, for its meaning");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    return then.isEmpty() ? new Reading.None("no operation before") : then.get().read("nail-fill");
  }
}
