package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Placement;
import org.bonewright.casefile.Plate;

/** The place of a plate says something, and the holes either side of the zone are a pair. */
final class PlacesSayWhereThePlateLies implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      plate
          .implant()
          .place()
          .ifPresent(place -> look(place, plate.at().field("place"), objections));
    }
  }

  private static void look(Placement place, At at, Objections objections) {
    Optional<List<Integer>> holes = place.zoneBetweenHoles();
    if (holes.isEmpty() && place.firstHoleMm().isEmpty()) {
      objections.refuse(
          at,
          "a place that says nothing",
          "zoneBetweenHoles or firstHoleMm; leave out place where neither is known");
    }
    if (holes.isPresent() && !isAscendingPair(holes.get())) {
      objections.refuse(
          at.field("zoneBetweenHoles"),
          "the zone between " + describe(holes.get()),
          "two holes: the last one before the zone and the first one beyond it, such as [5, 6]");
    }
  }

  private static boolean isAscendingPair(List<Integer> holes) {
    return holes.size() == 2 && holes.get(0) < holes.get(1);
  }

  private static String describe(List<Integer> holes) {
    return holes.isEmpty()
        ? "no holes"
        : "hole " + String.join(" and hole ", holes.stream().map(String::valueOf).toList());
  }
}
