package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.PlateSize;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the screws are those of the large or of the small fragment system. */
final class ScrewSystem implements Measure {

  private static final double SMALLEST_LARGE_SCREW = 4.5;

  @Override
  public Definition definition() {
    return new Definition(
        "screw-system",
        "Size of the screws",
        Definition.words("large", "small"),
        "large where a plate takes screws of 4.5 mm or more, or a fixator is in place, else small",
        List.of("operations/fixation/family"),
        "usual sizes; a fixator as large is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    boolean fixator = scene.certainly("fixator-used", "yes");
    if (plates.isEmpty() && !fixator) {
      return Holders.none(scene);
    }
    boolean large =
        plates.stream()
            .flatMap(placed -> placed.size().stream())
            .map(PlateSize::screw)
            .anyMatch(screw -> screw >= SMALLEST_LARGE_SCREW);
    if (fixator || large) {
      return Reading.word("large", fixator ? "pins" : "large fragment plate");
    }
    Optional<Plate> untold =
        plates.stream()
            .map(PlacedPlate::plate)
            .filter(plate -> plate.family().isEmpty())
            .findFirst();
    return untold
        .map(
            plate -> {
              MissingFact missing = PlateQuestions.family(scene, plate);
              return Reading.words(
                  Set.of("large", "small"), Kind.FACT, "plate size not stated", missing);
            })
        .orElseGet(() -> Reading.word("small", "screws of 3.5 mm or less"));
  }
}
