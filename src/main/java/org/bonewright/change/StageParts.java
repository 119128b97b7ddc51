package org.bonewright.change;

import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Finds the parts of a stage in its file. */
final class StageParts {

  private static final String FIXATION = "fixation";

  private StageParts() {}

  /** Return the indices of the implants of a kind. */
  static IntStream implants(ObjectNode stage, String kind) {
    JsonNode fixation = stage.path(FIXATION);
    return IntStream.range(0, fixation.size())
        .filter(i -> fixation.get(i).path("kind").asString("").equals(kind));
  }

  /** Return an implant by its index. */
  static ObjectNode implant(ObjectNode stage, int index) {
    return (ObjectNode) stage.path(FIXATION).get(index);
  }

  /** Return the name of an implant. */
  static String name(JsonNode implant) {
    return implant.path("id").asString("implant");
  }

  /** Return a name for a new implant of a kind that no implant of the stage has. */
  static String freeName(ObjectNode stage, String kind) {
    List<String> taken = each(stage.path(FIXATION)).map(StageParts::name).toList();
    return IntStream.iterate(1, i -> i + 1)
        .mapToObj(i -> kind + "-" + i)
        .filter(name -> !taken.contains(name))
        .findFirst()
        .orElseThrow();
  }

  /** Say nothing more of which holes the nerve crosses: of other metal nobody knows. */
  static void forgetCrossed(ObjectNode stage) {
    if (stage.path("nerve").path("holesCrossed").size() > 0) {
      stage.withObjectProperty("nerve").remove("holesCrossed");
    }
  }

  /** Return the elements of an array; none where there is none. */
  static Stream<JsonNode> each(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  /** Return the rows of screws of a plate. */
  static List<ObjectNode> rows(ObjectNode plate) {
    return each(plate.path("screws")).map(row -> (ObjectNode) row).toList();
  }

  /** Return the holes that hold a screw, in order. */
  static NavigableSet<Integer> used(ObjectNode plate) {
    NavigableSet<Integer> used = new TreeSet<>();
    rows(plate).forEach(row -> each(row.path("at")).forEach(hole -> used.add(hole.asInt())));
    return used;
  }

  /** Return the holes that are neither used nor closed, in order. */
  static List<Integer> free(ObjectNode plate) {
    NavigableSet<Integer> taken = used(plate);
    each(plate.path("plugged")).forEach(hole -> taken.add(hole.asInt()));
    return IntStream.rangeClosed(1, plate.path("holes").asInt(0))
        .filter(hole -> !taken.contains(hole))
        .boxed()
        .toList();
  }

  /** Return the row of the screw that lies nearest to a hole. */
  static ObjectNode nearest(ObjectNode plate, int hole) {
    ObjectNode best = rows(plate).get(0);
    int least = Integer.MAX_VALUE;
    for (ObjectNode row : rows(plate)) {
      for (JsonNode at : row.path("at")) {
        int distance = Math.abs(at.asInt() - hole);
        if (distance < least) {
          least = distance;
          best = row;
        }
      }
    }
    return best;
  }

  /** Put a fresh screw like the nearest one, and of its length, into a hole. */
  static void addScrew(ObjectNode plate, int hole) {
    ObjectNode row = nearest(plate, hole).deepCopy();
    row.remove(List.of("order", "tipBeyondMm", "state", "stateDay"));
    row.put("track", "fresh");
    row.putArray("at").add(hole);
    ((ArrayNode) plate.path("screws")).add(row);
  }

  /** Take the screw out of a hole. */
  static void takeScrew(ObjectNode plate, int hole) {
    ArrayNode screws = (ArrayNode) plate.path("screws");
    for (int i = screws.size() - 1; i >= 0; i--) {
      ObjectNode row = (ObjectNode) screws.get(i);
      List<Integer> left =
          each(row.path("at")).map(JsonNode::asInt).filter(at -> at != hole).toList();
      if (left.isEmpty()) {
        screws.remove(i);
      } else {
        ArrayNode at = row.putArray("at");
        left.forEach(at::add);
      }
    }
  }

  /** Return the middle of a quantity: a number, or half way through a range. */
  static double number(JsonNode quantity) {
    return quantity.isObject()
        ? (quantity.path("min").asDouble() + quantity.path("max").asDouble()) / 2
        : quantity.asDouble();
  }
}
