package org.bonewright.measures.graft;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a piece of bone is moved along to fill a defect. */
final class TransportUsed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "transport-used",
        "Bone transport",
        Definition.yesOrNo(),
        "yes when the operation, or any stage of the plan, starts a transport; one that is not"
            + " mentioned was not done",
        List.of("operations/transport"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene.subject().steps().stream().anyMatch(step -> step.transport().isPresent())
        ? Reading.word("yes", "bone transport")
        : Reading.word("no", "no transport mentioned");
  }
}
