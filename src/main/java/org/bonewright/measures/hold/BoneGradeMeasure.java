package org.bonewright.measures.hold;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.bone.BoneGrade;
import org.bonewright.measures.BoneGrades;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** How well the bone holds a screw. */
final class BoneGradeMeasure implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "bone-grade",
        "Bone grade",
        Definition.words("good", "reduced", "poor"),
        "the worst grade that a measurement or two stripped screws show; unmeasured bone counts as"
            + " good unless there is, or may be, a reason to measure it: age, fall, steroids, disuse"
            + " or an earlier operation",
        List.of("bone/quality", "operations/fixation/screws/state", "bone-doubt"),
        "deltoid tuberosity index: Labronici et al. (cut-off 1.4); other cut-offs from memory; the"
            + " default is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Set<BoneGrade> possible = BoneGrades.possible(scene.subject());
    Set<String> words = possible.stream().map(Words::written).collect(Collectors.toSet());
    MissingFact missing =
        scene.missingInCase(
            "bone/quality",
            "How good is the bone? One measurement with its method (cortical thickness, index or"
                + " density scan).");
    if (!BoneGrades.measured(scene.subject()).isEmpty()) {
      return Reading.words(words, Kind.FACT, "bone quality measured", missing);
    }
    if (possible.equals(Set.of(BoneGrade.POOR))) {
      return Reading.words(words, Kind.FACT, "two or more screws stripped at an earlier operation");
    }
    if (possible.size() == 1) {
      return Reading.words(words, Kind.ASSUMED, "not measured, no reason for doubt");
    }
    return Reading.words(
        words,
        Kind.ASSUMED,
        "not measured; " + String.join(", ", BoneGrades.reasonsToMeasure(scene.subject())),
        missing);
  }
}
