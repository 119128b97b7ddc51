package org.bonewright.measures;

import java.util.List;

/** Whether bone is fixed for the first time or again. */
final class Setting implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "setting",
        "Fresh fracture or revision",
        Definition.words("fresh", "revision"),
        "revision when an earlier operation put in a fixation, or put in what is not stated",
        List.of("operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene.subject().isRevision()
        ? Reading.word("revision", "operated before")
        : Reading.word("fresh", "first fixation");
  }
}
