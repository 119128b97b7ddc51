package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Cortices that each of two plates holds on each side; the fewest. */
final class CorticesPerPlate implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "cortices-weakest-plate",
        "Cortices of the weaker plate side",
        Definition.count(0),
        "cortices crossed by the screws of each plate on each side of the zone, where two plates are"
            + " in place; the smallest sum counts. A stripped screw counts nothing; a conventional"
            + " screw that is not described two, a locking one one or two",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "usual way of counting; old screw holes are left to the principles on hold");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    if (plates.size() < 2) {
      return TwoPlates.none(scene);
    }
    List<Dimension> sums = new ArrayList<>();
    Set<MissingFact> missing = new LinkedHashSet<>();
    for (PlacedPlate placed : plates) {
      Optional<SideScrews> sides = SideScrews.of(placed);
      if (sides.isEmpty()) {
        return Reading.unknown(
            PlateQuestions.screws(scene, placed.plate()),
            PlateQuestions.place(scene, placed.plate()));
      }
      sums.add(sum(placed, sides.get().near()));
      sums.add(sum(placed, sides.get().far()));
      missing.add(
          scene.missing(
              "fixation/" + placed.plate().id() + "/screws/cortices",
              "Do the screws of " + placed.plate().id() + " cross one cortex or both?"));
    }
    double min = sums.stream().mapToDouble(Dimension::min).min().orElseThrow();
    double max = sums.stream().mapToDouble(Dimension::max).min().orElseThrow();
    return new Reading.Amount(
        min,
        max,
        sums.stream().anyMatch(Dimension::assumed) ? Kind.ASSUMED : Kind.FACT,
        "the weakest side of " + plates.size() + " plates",
        min == max ? List.of() : List.copyOf(missing));
  }

  private static Dimension sum(PlacedPlate placed, List<Integer> holes) {
    Dimension sum = new Dimension(0, 0, false, "");
    for (int hole : holes) {
      sum = sum.plus(cortices(placed.screwIn(hole).orElseThrow()));
    }
    return sum;
  }

  private static Dimension cortices(ScrewRow row) {
    if (row.state().equals(Optional.of(ScrewRow.State.STRIPPED))) {
      return new Dimension(0, 0, false, "");
    }
    if (row.cortices().isPresent()) {
      return Dimension.stated(row.cortices().get(), "");
    }
    return row.type() == ScrewRow.Type.LOCKING
        ? Dimension.assumed(1, 2, "")
        : Dimension.assumed(2, 2, "");
  }
}
