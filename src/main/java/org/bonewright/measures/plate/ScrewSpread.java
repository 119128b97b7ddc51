package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How widely the screws of a main fragment are spread along the plate that lies over it. */
final class ScrewSpread implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "screw-spread-share",
        "Spread of the screws",
        Definition.ratio(),
        "for each main fragment the distance from its first to its last screw, divided by the length"
            + " of the plate over it, at most 1; the smaller counts; of the longest plate",
        List.of(
            "operations/fixation/place",
            "operations/fixation/screws",
            "operations/fixation/lengthMm",
            "injury/zone",
            "findings/zone"),
        "Stoffel et al., J Orthop Trauma 2004, for the spread; the share is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    PlacedPlate placed = plate.get();
    Plate recorded = placed.plate();
    if (recorded.screws().isEmpty()) {
      return Reading.unknown(PlateQuestions.screws(scene, recorded));
    }
    Optional<SideScrews> sides = SideScrews.of(placed);
    if (sides.isEmpty()) {
      return Reading.unknown(PlateQuestions.place(scene, recorded));
    }
    if (sides.get().near().isEmpty() || sides.get().far().isEmpty()) {
      return new Reading.None("no plate screw on one side of the zone");
    }
    Optional<PlateReach> reach = PlateReach.of(scene, placed);
    if (reach.isEmpty()) {
      return Reading.unknown(PlateQuestions.zone(scene), PlateQuestions.holes(scene, recorded));
    }
    Dimension near = share(placed, sides.get().near(), reach.get().on(HoleSide.NEAR));
    Dimension far = share(placed, sides.get().far(), reach.get().on(HoleSide.FAR));
    return Reading.number(
        new Dimension(
            Math.min(near.min(), far.min()),
            Math.min(near.max(), far.max()),
            near.assumed() || far.assumed(),
            ""),
        "near " + near.numbers() + ", far " + far.numbers(),
        PlateQuestions.vague(scene, placed).toArray(MissingFact[]::new));
  }

  private static Dimension share(PlacedPlate placed, List<Integer> holes, Dimension reach) {
    int apart = holes.get(holes.size() - 1) - holes.get(0);
    Dimension step = placed.spacing().orElseThrow();
    double least = reach.max() <= 0 ? 1 : Math.min(1, apart * step.min() / reach.max());
    double most = reach.min() <= 0 ? 1 : Math.min(1, apart * step.max() / reach.min());
    return new Dimension(least, most, reach.assumed() || step.assumed(), "");
  }
}
