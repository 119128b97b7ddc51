package org.bonewright.measures.line;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone ends were cut back in this operation. */
final class EndsResected implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "ends-resected",
        "Bone ends cut back",
        Definition.yesOrNo(),
        "yes when the operation resects bone; no when it says that it resects none, for a first"
            + " fixation, and in a plan that names no resection",
        List.of("operations/resection", "setting"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("setting", "fresh")) {
      return Reading.word("no", "first fixation");
    }
    return scene
        .fixing()
        .resection()
        .map(
            cut ->
                cut.isEmpty()
                    ? Reading.word("no", "no resection")
                    : Reading.word("yes", "ends cut back"))
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missingOfFixing(
                        "resection", "Were the bone ends cut back, and by how much?")));
  }
}
