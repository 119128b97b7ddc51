package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the plate goes beyond the zone on its shorter side, in diameters of the bone. */
final class ReachBeyondZone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "reach-beyond-zone",
        "Reach beyond the zone",
        Definition.ratio(),
        "length of the longest plate beyond the zone on its shorter side, divided by the outer"
            + " diameter of the bone at the zone; zero where it ends over the zone",
        List.of(
            "operations/fixation/place",
            "operations/fixation/lengthMm",
            "injury/zone",
            "findings/zone",
            "outer-at-zone"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    Plate recorded = plate.get().plate();
    Optional<PlateReach> reach = PlateReach.of(scene, plate.get());
    Optional<Dimension> length = plate.get().length();
    if (reach.isEmpty() || length.isEmpty()) {
      return Reading.unknown(
          scene.zone().length().isEmpty()
              ? PlateQuestions.zone(scene)
              : recorded.place().isEmpty()
                  ? PlateQuestions.place(scene, recorded)
                  : PlateQuestions.holes(scene, recorded));
    }
    Dimension shorter = reach.get().shorter(length.get());
    Dimension outer = scene.bone().outerAt(scene.zone());
    Dimension share = shorter.over(outer);
    List<MissingFact> vague = PlateQuestions.vague(scene, plate.get());
    if (PlateQuestions.open(Optional.of(outer))) {
      vague.add(PlateQuestions.width(scene));
    }
    return Reading.number(
        share,
        shorter.numbers() + " mm beyond the zone / " + outer.numbers() + " mm",
        vague.toArray(MissingFact[]::new));
  }
}
