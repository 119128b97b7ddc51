package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the plate lies on a side that opens under load, and of which bone. */
final class TensionSidePlate implements Measure {

  private static final double WITHIN_DEGREES = 45;

  @Override
  public Definition definition() {
    return new Definition(
        "tension-side-plate",
        "Plate on the tension side",
        Definition.words("femur", "humerus", "tibia", "no"),
        "the bone, where the longest plate lies on the lateral side of the femur, on the medial or"
            + " lateral side of the tibia (each within 45 degrees), or anywhere on the humerus; else"
            + " no",
        List.of("bone/name", "operations/fixation/surface"),
        "AO Principles textbook, from memory; the 45 degrees are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    BoneName bone = scene.boneName();
    String word = Words.written(bone);
    if (bone == BoneName.HUMERUS) {
      return Reading.word(word, "any side of the humerus");
    }
    if (bone != BoneName.FEMUR && bone != BoneName.TIBIA) {
      return Reading.word("no", "not asked of this bone");
    }
    Plate recorded = plate.get().plate();
    return recorded
        .surface()
        .map(
            surface ->
                opens(bone, surface)
                    ? Reading.word(word, "plate at " + Math.round(surface.degrees()) + "°")
                    : Reading.word("no", "plate at " + Math.round(surface.degrees()) + "°"))
        .orElseGet(
            () ->
                Reading.words(
                    Set.of(word, "no"),
                    Kind.FACT,
                    "surface not stated",
                    PlateQuestions.surface(scene, recorded)));
  }

  private static boolean opens(BoneName bone, Direction surface) {
    return within(surface, Direction.Named.LATERAL)
        || (bone == BoneName.TIBIA && within(surface, Direction.Named.MEDIAL));
  }

  private static boolean within(Direction surface, Direction.Named side) {
    return surface.angleTo(side.direction()) <= WITHIN_DEGREES;
  }
}
