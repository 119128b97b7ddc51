package org.bonewright.measures.graft;

import java.util.List;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether bone is cut out and the gap is closed by shortening. */
final class ResectionClosed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "resection-closed",
        "Bone cut out and the gap closed",
        Definition.yesOrNo(),
        "yes when the bone cut out, in any stage, is longer than the gap left at the end",
        List.of("operations/resection", "gap-widest"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    MissingFact asked =
        scene.missing("resection", "How much bone was cut out, and how wide a gap was left?");
    if (steps.stream().anyMatch(step -> step.resection().isEmpty())) {
      return Reading.unknown(asked);
    }
    Dimension cut = Shortening.cut(steps);
    if (cut.max() <= 0) {
      return Reading.word("no", "no bone cut out");
    }
    Dimension left = Shortening.gapLeft(scene.read("gap-widest"));
    String working = cut.numbers() + " mm cut out";
    if (cut.min() > left.max()) {
      return Reading.word("yes", working + ", closed");
    }
    return cut.max() <= left.min()
        ? Reading.word("no", working + ", gap left open")
        : Reading.words(Set.of("yes", "no"), Kind.FACT, working + ", gap left not clear", asked);
  }
}
