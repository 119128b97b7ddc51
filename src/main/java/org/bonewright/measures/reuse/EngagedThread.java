package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** How much of its thread the plate screw that old tracks have robbed most still engages. */
final class EngagedThread implements Measure {

  private static final double PERCENT = 100;
  private static final double WHOLE = 1;

  @Override
  public Definition definition() {
    return new Definition(
        "thread-engaged-least",
        "Least engaged thread",
        Definition.percent(),
        "share of the ring of its thread, from core to outer diameter, that lies in bone which no"
            + " old track has taken, in one cortex; the smallest of all plate screws, in whole percent. None where no"
            + " screw meets an old track",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "geometry of two cylinders in a tube");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return Plates.noPlate(scene);
    }
    Optional<PlacedPlate> untold =
        scene.plates().stream().filter(placed -> placed.plate().screws().isEmpty()).findFirst();
    if (untold.isPresent()) {
      String id = untold.get().plate().id();
      return Reading.unknown(
          scene.missing(
              "fixation/" + id + "/screws", "Which holes of " + id + " hold which screw?"));
    }
    double least = WHOLE;
    double most = WHOLE;
    List<String> screws = new ArrayList<>();
    for (PlacedPlate plate : scene.plates()) {
      for (int hole : plate.allHoles().toArray()) {
        for (Dimension share : shares(scene, plate, hole)) {
          if (share.min() < WHOLE) {
            least = Math.min(least, share.min());
            most = Math.min(most, share.max());
            screws.add(plate.plate().id() + " hole " + hole);
          }
        }
      }
    }
    if (screws.isEmpty()) {
      return new Reading.None("no plate screw meets an old track");
    }
    return new Reading.Amount(
        Math.rint(PERCENT * least),
        Math.rint(PERCENT * most),
        Kind.FACT,
        String.join(", ", screws.stream().distinct().toList()),
        least == most ? List.of() : List.of(HoleMap.placeOfNewPlate(scene)));
  }

  private static List<Dimension> shares(Scene scene, PlacedPlate plate, int hole) {
    Optional<Bite> bite = plate.screwIn(hole).flatMap(row -> scene.bite(plate.plate(), hole));
    List<Dimension> shares = new ArrayList<>();
    bite.map(Bite::near).ifPresent(shares::add);
    bite.flatMap(Bite::far).ifPresent(shares::add);
    return shares;
  }
}
