package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far apart two plates lie round the bone. */
final class PlateAngle implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "angle-between-plates",
        "Angle between the plates",
        Definition.degrees(),
        "angle between the surfaces of the two longest plates, the short way round the bone",
        List.of("operations/fixation/surface"),
        "Kosmopoulos and Nana, Clin Orthop 2013");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> two = TwoPlates.of(scene);
    if (two.isEmpty()) {
      return TwoPlates.none(scene);
    }
    List<Plate> plates = two.stream().map(PlacedPlate::plate).toList();
    return PlatePair.angle(plates.get(0), plates.get(1))
        .map(angle -> Reading.number(angle, "between the two longest plates"))
        .orElseGet(
            () ->
                new Reading.Unknown(
                    plates.stream()
                        .filter(plate -> plate.surface().isEmpty())
                        .map(plate -> PlateQuestions.surface(scene, plate))
                        .toList()));
  }
}
