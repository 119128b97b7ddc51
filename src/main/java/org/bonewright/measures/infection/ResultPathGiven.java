package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the plan says who acts on cultures that grow late, and how. */
final class ResultPathGiven implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "result-path-given",
        "A path for late culture results",
        Definition.yesOrNo(),
        "yes when the plan says who acts on late culture results; none for an operation of the past",
        List.of("plans/resultPath"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .plan()
        .map(Plan::resultPath)
        .<Reading>map(
            path ->
                path.isPresent()
                    ? Reading.word("yes", "a path is written down")
                    : Reading.word("no", "none is written down"))
        .orElseGet(() -> new Reading.None("not a plan"));
  }
}
