package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Counts of plate holes between the innermost screws either side of the zone. */
final class HolesOverLine implements Measure {

  /** What is counted. */
  enum Count {
    /** Holes without a screw, plugged or not. */
    SCREW_FREE,
    /** Holes without a screw or a plug. */
    OPEN,
    /** Whether a screw stands in a hole that lies over the zone. */
    SCREW_IN_ZONE
  }

  private final Count count;

  HolesOverLine(Count count) {
    this.count = count;
  }

  @Override
  public Definition definition() {
    return switch (count) {
      case SCREW_FREE ->
          define(
              "screw-free-holes-over-line",
              "Holes without a screw over the line",
              Definition.count(1),
              "holes between the innermost screws either side of the zone that hold no screw");
      case OPEN ->
          define(
              "open-holes-over-line",
              "Open holes over the line",
              Definition.count(1),
              "holes between the innermost screws either side of the zone that hold neither screw"
                  + " nor plug");
      case SCREW_IN_ZONE ->
          define(
              "screw-in-zone",
              "A plate screw in the zone",
              Definition.yesOrNo(),
              "yes when a screw fills a hole that lies over the zone; a lag screw through the plate"
                  + " is not counted");
    };
  }

  private static Definition define(
      String id, String title, Definition.Domain domain, String formula) {
    return new Definition(
        id,
        title,
        domain,
        formula + ", of the longest plate",
        List.of("operations/fixation/place", "operations/fixation/screws"),
        "bookkeeping");
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
      return Reading.unknown(
          scene.missing(
              "fixation/" + recorded.id() + "/screws",
              "Which holes of " + recorded.id() + " hold which screw?"));
    }
    boolean unsure =
        placed
            .allHoles()
            .filter(hole -> placed.screwIn(hole).isPresent())
            .anyMatch(hole -> placed.side(hole) == HoleSide.UNSURE);
    if (unsure) {
      return Reading.unknown(
          scene.missing(
              "fixation/" + recorded.id() + "/place",
              "Which two holes of " + recorded.id() + " lie either side of the zone?"));
    }
    if (count == Count.SCREW_IN_ZONE) {
      List<Integer> inside =
          placed.holes(HoleSide.OVER).stream()
              .filter(hole -> placed.screwIn(hole).isPresent())
              .toList();
      return inside.isEmpty()
          ? Reading.word("no", "no screw in the zone")
          : Reading.word("yes", "in holes " + inside);
    }
    return free(placed);
  }

  private Reading free(PlacedPlate placed) {
    OptionalInt last = innermost(placed, HoleSide.NEAR).max();
    OptionalInt first = innermost(placed, HoleSide.FAR).min();
    if (last.isEmpty() || first.isEmpty()) {
      return new Reading.None("no plate screw on one side of the zone");
    }
    List<Integer> free =
        IntStream.range(last.getAsInt() + 1, first.getAsInt())
            .filter(hole -> !placed.isFilled(hole))
            .filter(hole -> count == Count.SCREW_FREE || !placed.plate().plugged().contains(hole))
            .boxed()
            .toList();
    return Reading.number(
        free.size(),
        "innermost screws in holes "
            + last.getAsInt()
            + " and "
            + first.getAsInt()
            + (free.isEmpty() ? "" : "; free " + free));
  }

  private static IntStream innermost(PlacedPlate placed, HoleSide side) {
    return placed.holes(side).stream()
        .filter(hole -> placed.screwIn(hole).isPresent())
        .mapToInt(Integer::intValue);
  }
}
