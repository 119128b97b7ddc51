package org.bonewright.measures.hold;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.bone.BoneGrade;
import org.bonewright.casefile.BoneQuality;
import org.bonewright.measures.BoneGrades;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** How the grade of the bone came to be known. */
final class BoneGradeMethod implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "bone-grade-method",
        "How bone quality is known",
        Definition.words("measured", "inferred", "not-measured"),
        "measured when the file holds a measurement, known by then, that grades this bone; inferred"
            + " when two or more screws stripped at earlier operations; else not measured. Hounsfield"
            + " units differ between scanners and grade nothing",
        List.of("bone/quality", "operations/fixation/screws/state"),
        "bookkeeping; methods as in the bone grade");
  }

  @Override
  public Reading take(Scene scene) {
    if (!BoneGrades.measured(scene.subject()).isEmpty()) {
      return recorded("measured", methods(scene));
    }
    long stripped = BoneGrades.strippedScrews(scene.subject());
    return stripped >= 2
        ? recorded("inferred", stripped + " screws stripped at earlier operations")
        : recorded("not-measured", "no measurement that grades this bone");
  }

  private static Reading recorded(String word, String working) {
    return Reading.words(Set.of(word), Kind.RECORD, working);
  }

  private static String methods(Scene scene) {
    return scene.subject().caseFile().bone().quality().stream()
        .filter(quality -> quality.day().map(scene.subject()::knows).orElse(true))
        .filter(quality -> grades(scene, quality))
        .map(quality -> Words.of(quality.method()) + " " + Numbers.shown(quality.value()))
        .collect(Collectors.joining(", "));
  }

  private static boolean grades(Scene scene, BoneQuality quality) {
    Set<BoneGrade> grades = BoneGrade.measured(scene.boneName(), List.of(quality));
    return !grades.isEmpty();
  }
}
