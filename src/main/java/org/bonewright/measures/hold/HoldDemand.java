package org.bonewright.measures.hold;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the usual or the raised number of cortices is asked for. */
final class HoldDemand implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "hold-demand",
        "Hold asked for",
        Definition.words("usual", "raised"),
        "raised for a revision, and for poor bone; else usual",
        List.of("setting", "bone-grade"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("setting", "revision")) {
      return Reading.word("raised", "revision");
    }
    Reading grade = scene.read("bone-grade");
    Set<String> possible = new HashSet<>();
    if (scene.possibly("setting", "revision") || scene.possibly("bone-grade", "poor")) {
      possible.add("raised");
    }
    if (scene.possibly("bone-grade", "good") || scene.possibly("bone-grade", "reduced")) {
      possible.add("usual");
    }
    return Reading.words(
        possible,
        grade instanceof Reading.Word word ? word.kind() : Kind.ASSUMED,
        "first fixation, bone " + grade.shown(),
        Reading.missingOf(scene.read("setting"), grade).toArray(MissingFact[]::new));
  }
}
