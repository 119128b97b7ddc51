package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.BoneName;
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
        "raised for a revision and for poor bone; in the humerus for reduced bone too; in the femur"
            + " unless a plate has five or more holes on either side of the zone with the outermost"
            + " screw three or more holes from the innermost; else usual",
        List.of("setting", "bone-grade", "bone-name", "operations/fixation/screws"),
        "AO teaching, from memory; what counts as a long plate with spread screws is our"
            + " convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("setting", "revision")) {
      return Reading.word("raised", "revision");
    }
    Reading grade = scene.read("bone-grade");
    List<MissingFact> missing = new ArrayList<>(Reading.missingOf(scene.read("setting"), grade));
    Set<String> possible = new TreeSet<>();
    if (scene.possibly("setting", "revision") || scene.possibly("bone-grade", "poor")) {
      possible.add("raised");
    }
    boolean reducedIsWeak = scene.boneName() == BoneName.HUMERUS;
    if (scene.possibly("bone-grade", "reduced")) {
      possible.add(reducedIsWeak ? "raised" : "usual");
    }
    if (scene.possibly("bone-grade", "good")) {
      possible.add("usual");
    }
    String working = "first fixation, bone " + grade.shown();
    if (scene.boneName() == BoneName.FEMUR
        && possible.contains("usual")
        && !scene.certainly("plate-used", "no")) {
      Optional<Boolean> spread = SpreadUnderLongPlate.of(scene);
      if (spread.isEmpty()) {
        possible.add("raised");
        missing.add(layoutMissing(scene));
        working += ", layout of the plate not known";
      } else if (spread.get()) {
        working += ", long plate with spread screws";
      } else {
        possible = Set.of("raised");
        working += ", no long plate with spread screws";
      }
    }
    return Reading.words(
        possible,
        grade instanceof Reading.Word word ? word.kind() : Kind.ASSUMED,
        working,
        missing.toArray(MissingFact[]::new));
  }

  private static MissingFact layoutMissing(Scene scene) {
    return scene.missing(
        "fixation/screws",
        "How many holes has the plate on either side of the zone, and which hold a screw?");
  }
}
