package org.bonewright.measures.setting;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the subject is still to be done. */
final class Planned implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "planned",
        "Still to be done",
        Definition.yesOrNo(),
        "yes for a plan and its stages, no for an operation that was done",
        List.of("plans", "operations"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene.subject().planned()
        ? Reading.word("yes", "a plan")
        : Reading.word("no", "an operation that was done");
  }
}
