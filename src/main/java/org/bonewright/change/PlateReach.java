package org.bonewright.change;

import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that let a plate lie longer, or elsewhere along the bone. */
final class PlateReach {

  private static final int LONGEST = 4;
  private static final int FARTHEST = 3;

  private PlateReach() {}

  /** A plate of one, then of two more holes at each end; screws stay where they are in the bone. */
  static Stream<Edit> longer(ObjectNode stage, Setting setting) {
    return IntStream.rangeClosed(1, LONGEST)
        .boxed()
        .flatMap(
            more ->
                PlateMoves.plates(stage)
                    .filter(i -> laid(StageParts.implant(stage, i)))
                    .filter(i -> isKept(StageParts.implant(stage, i), more, setting))
                    .mapToObj(
                        i ->
                            Edit.of(
                                stage,
                                StageParts.name(StageParts.implant(stage, i))
                                    + " longer by "
                                    + more
                                    + (more == 1 ? " hole" : " holes")
                                    + " at each end, its end screws moved out to the new ends",
                                changed -> lengthen(changed, i, more))));
  }

  private static void lengthen(ObjectNode stage, int index, int more) {
    ObjectNode plate = StageParts.implant(stage, index);
    lengthen(plate, more, Plates.spacingMm(plate));
    renumberCrossed(stage, more, plate.path("holes").asInt());
    StageParts.each(stage.path("fixation"))
        .filter(lag -> lag.path("throughPlate").asString("").equals(StageParts.name(plate)))
        .filter(lag -> lag.has("hole"))
        .forEach(lag -> ((ObjectNode) lag).put("hole", lag.path("hole").asInt() + more));
  }

  /** The nerve stays where it is: it crosses other holes then, or none. */
  private static void renumberCrossed(ObjectNode stage, int by, int holes) {
    JsonNode crossed = stage.path("nerve").path("holesCrossed");
    if (crossed.isArray() && !crossed.isEmpty()) {
      ArrayNode now = stage.withObjectProperty("nerve").putArray("holesCrossed");
      for (JsonNode hole : crossed) {
        if (hole.asInt() + by >= 1 && hole.asInt() + by <= holes) {
          now.add(hole.asInt() + by);
        }
      }
    }
  }

  private static boolean isKept(ObjectNode plate, int more, Setting setting) {
    return PlateChoices.isKept(plate, plate.path("holes").asInt() + 2 * more, setting);
  }

  private static boolean laid(ObjectNode plate) {
    return Plates.spacingMm(plate) > 0
        && plate.path("holes").asInt(0) > 2
        && plate.path("place").path("zoneBetweenHoles").size() == 2
        && !StageParts.used(plate).isEmpty();
  }

  private static void lengthen(ObjectNode plate, int more, double spacing) {
    NavigableSet<Integer> used = StageParts.used(plate);
    int holes = plate.path("holes").asInt();
    for (ObjectNode row : StageParts.rows(plate)) {
      List<Integer> now = StageParts.each(row.path("at")).map(JsonNode::asInt).toList();
      ArrayNode at = row.putArray("at");
      for (int hole : now) {
        boolean end = (hole == used.first() && hole == 1) || (hole == used.last() && hole == holes);
        at.add(!end ? hole + more : hole == 1 ? 1 : holes + 2 * more);
      }
    }
    plate.put("holes", holes + 2 * more);
    if (plate.has("lengthMm")) {
      plate.put("lengthMm", StageParts.number(plate.path("lengthMm")) + 2 * more * spacing);
    }
    shiftPlugged(plate, more);
    shiftPlace(plate, more, more * spacing);
  }

  private static void shiftPlugged(ObjectNode plate, int more) {
    if (plate.path("plugged").size() > 0) {
      List<Integer> now = StageParts.each(plate.path("plugged")).map(JsonNode::asInt).toList();
      ArrayNode plugged = plate.putArray("plugged");
      now.forEach(hole -> plugged.add(hole + more));
    }
  }

  private static void shiftPlace(ObjectNode plate, int holes, double nearer) {
    ObjectNode place = (ObjectNode) plate.path("place");
    int first = place.path("zoneBetweenHoles").get(0).asInt() + holes;
    int second = place.path("zoneBetweenHoles").get(1).asInt() + holes;
    place.putArray("zoneBetweenHoles").add(first).add(second);
    if (place.has("firstHoleMm")) {
      place.put("firstHoleMm", StageParts.number(place.path("firstHoleMm")) - nearer);
    }
  }

  /** The plate moved along the bone: by half a hole, then by whole ones. */
  static Stream<Edit> shifted(ObjectNode stage) {
    return Stream.concat(
        shiftedByHalf(stage), shiftedByHoles(stage, PlateMoves.plates(stage).boxed().toList()));
  }

  private static Stream<Edit> shiftedByHalf(ObjectNode stage) {
    return Stream.of(0.5, -0.5)
        .flatMap(
            by ->
                PlateMoves.plates(stage)
                    .filter(i -> laid(StageParts.implant(stage, i)))
                    .filter(i -> StageParts.implant(stage, i).path("place").has("firstHoleMm"))
                    .mapToObj(
                        i ->
                            Edit.of(
                                stage,
                                StageParts.name(StageParts.implant(stage, i))
                                    + " moved by half a hole"
                                    + towards(by)
                                    + ", its screws in the same holes",
                                changed -> shiftLevel(changed, i, by))));
  }

  /** Which holes lie either side of the line then, and which the nerve crosses, nobody told. */
  private static void shiftLevel(ObjectNode stage, int index, double by) {
    ObjectNode plate = StageParts.implant(stage, index);
    StageParts.forgetCrossed(stage);
    double first = StageParts.number(plate.path("place").path("firstHoleMm"));
    plate.putObject("place").put("firstHoleMm", first - by * Plates.spacingMm(plate));
  }

  private static String towards(double by) {
    return by > 0 ? " towards the near end" : " towards the far end";
  }

  /** Of two plates the shorter one moved along the bone, so that their ends lie at two levels. */
  static Stream<Edit> staggered(ObjectNode stage) {
    List<Integer> plates = PlateMoves.plates(stage).boxed().toList();
    return plates.size() == 2
        ? plates.stream()
            .min(Comparator.comparingDouble(i -> Plates.lengthMm(StageParts.implant(stage, i))))
            .stream()
            .flatMap(shorter -> shiftedByHoles(stage, List.of(shorter)))
        : Stream.empty();
  }

  private static Stream<Edit> shiftedByHoles(ObjectNode stage, List<Integer> plates) {
    return IntStream.rangeClosed(1, FARTHEST)
        .boxed()
        .flatMap(by -> Stream.of(by, -by))
        .flatMap(
            by ->
                plates.stream()
                    .filter(i -> laid(StageParts.implant(stage, i)))
                    .filter(i -> staysOver(StageParts.implant(stage, i), by))
                    .map(
                        i ->
                            Edit.of(
                                stage,
                                StageParts.name(StageParts.implant(stage, i))
                                    + " moved by "
                                    + Math.abs(by)
                                    + (Math.abs(by) == 1 ? " hole" : " holes")
                                    + towards(by)
                                    + ", its screws in the same holes",
                                changed -> shift(changed, i, by))));
  }

  private static void shift(ObjectNode stage, int index, int by) {
    ObjectNode plate = StageParts.implant(stage, index);
    shiftPlace(plate, by, by * Plates.spacingMm(plate));
    renumberCrossed(stage, by, plate.path("holes").asInt());
  }

  private static boolean staysOver(ObjectNode plate, int by) {
    int first = plate.path("place").path("zoneBetweenHoles").get(0).asInt() + by;
    int second = plate.path("place").path("zoneBetweenHoles").get(1).asInt() + by;
    return first >= 1 && second <= plate.path("holes").asInt();
  }
}
