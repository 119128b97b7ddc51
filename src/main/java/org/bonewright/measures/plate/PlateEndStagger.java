package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the ends of two plates are staggered along the bone, in holes. */
final class PlateEndStagger implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-end-stagger",
        "Stagger of the plate ends, in holes",
        Definition.ratio(),
        "distance along the bone between the ends of the two longest plates, the smaller of near and"
            + " far ends, divided by the larger hole spacing",
        List.of("operations/fixation/place", "operations/fixation/holes", "injury/zone"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> two = TwoPlates.of(scene);
    if (two.isEmpty()) {
      return TwoPlates.none(scene);
    }
    Optional<Dimension> stagger = stagger(two.get(0), two.get(1));
    List<MissingFact> missing =
        two.stream()
            .flatMap(placed -> PlateQuestions.vague(scene, placed).stream())
            .distinct()
            .toList();
    return stagger
        .map(
            holes ->
                Reading.number(
                    holes, "ends of the two longest plates", missing.toArray(MissingFact[]::new)))
        .orElseGet(() -> new Reading.Unknown(missing));
  }

  private static Optional<Dimension> stagger(PlacedPlate one, PlacedPlate other) {
    Optional<Dimension> step = one.spacing().flatMap(a -> other.spacing().map(b -> a.atLeast(b)));
    return PlateEnds.fromZone(one)
        .flatMap(
            a ->
                PlateEnds.fromZone(other)
                    .flatMap(b -> step.map(spacing -> smaller(a, b).over(spacing))));
  }

  private static Dimension smaller(PlateEnds a, PlateEnds b) {
    Dimension near = a.near().minus(b.near()).magnitude();
    Dimension far = a.far().minus(b.far()).magnitude();
    return new Dimension(
        Math.min(near.min(), far.min()),
        Math.min(near.max(), far.max()),
        near.assumed() || far.assumed(),
        "");
  }
}
