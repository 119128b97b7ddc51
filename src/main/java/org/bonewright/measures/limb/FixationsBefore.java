package org.bonewright.measures.limb;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many operations before put metal in. */
final class FixationsBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "fixations-before",
        "Fixations before",
        Definition.count(1),
        "operations before that put anything in; one that does not tell may have",
        List.of("operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> before = scene.doneBefore();
    int told = (int) before.stream().filter(FixationsBefore::put).count();
    int open = (int) before.stream().filter(step -> step.fixation().isEmpty()).count();
    return Reading.number(
        new Dimension(told, (double) told + open, false, ""),
        before.size() + " operations before",
        scene.missingInCase("operations/fixation", "What did each operation before put in?"));
  }

  private static boolean put(Operation step) {
    return step.fixation().map(fixation -> !fixation.isEmpty()).orElse(false);
  }
}
