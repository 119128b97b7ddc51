package org.bonewright.measures.alignment;

import java.util.List;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the line was opened when the bone was set. */
final class LineOpened implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "line-opened",
        "Line opened",
        Definition.yesOrNo(),
        "no where the approach of the operation that set the bone was closed, yes for any other",
        List.of("operations/approach"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .fixing()
        .approach()
        .map(
            approach ->
                approach == Operation.Approach.CLOSED
                    ? Reading.word("no", "small incisions away from the line")
                    : Reading.word("yes", "opened"))
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missingOfFixing(
                        "approach", "By which approach, or closed through small incisions?")));
  }
}
