package org.bonewright.measures.plate;

import java.util.List;
import java.util.Set;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether two plates hold the bone. */
final class TwoPlates implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "two-plates",
        "Two plates hold the bone",
        Definition.yesOrNo(),
        "yes when two plates or more are in place at the end",
        List.of("operations/fixation", "operations/removed"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    int plates = scene.construct().of(Plate.class).size();
    if (plates >= 2) {
      return Reading.word("yes", plates + " plates in place");
    }
    return scene.construct().known()
        ? Reading.word("no", plates == 1 ? "one plate in place" : "no plate in place")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "the implants are not stated",
            scene.missing("fixation", "Which implants were put in?"));
  }

  /** Return the two longest plates; none where there are fewer. */
  static List<PlacedPlate> of(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    return plates.size() < 2 ? List.of() : plates.subList(0, 2);
  }

  /** Return what a measure of the second plate says where there is none, or none is told of. */
  static Reading none(Scene scene) {
    return scene.certainly("two-plates", "no")
        ? new Reading.None("no second plate")
        : new Reading.Unknown(scene.read("two-plates").missing());
  }
}
