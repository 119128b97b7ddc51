package org.bonewright.change;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves of nails and their bolts. */
final class NailMoves {

  private static final double OVER = 1.5;
  private static final int THICKEST = 3;
  private static final int APART = 20;

  private NailMoves() {}

  /** A nail thicker by 1 to 3 mm, reamed for it. */
  static Stream<Edit> thicker(ObjectNode stage, Setting setting) {
    return IntStream.rangeClosed(1, THICKEST)
        .boxed()
        .flatMap(
            by ->
                nails(stage, "outerMm")
                    .filter(i -> NailChoices.isKept(thicker(stage, i, by), setting))
                    .mapToObj(
                        i ->
                            Edit.of(
                                stage,
                                i,
                                StageParts.name(StageParts.implant(stage, i))
                                    + " thicker by "
                                    + by
                                    + " mm, reamed for it",
                                nail -> thicken(nail, by))));
  }

  private static double thicker(ObjectNode stage, int index, int by) {
    return StageParts.number(StageParts.implant(stage, index).path("outerMm")) + by;
  }

  private static void thicken(ObjectNode nail, int by) {
    double outer = StageParts.number(nail.path("outerMm")) + by;
    nail.put("outerMm", outer);
    if (!(StageParts.number(nail.path("reamedMm")) >= outer + OVER)) {
      nail.put("reamedMm", outer + OVER);
    }
  }

  /** The canal reamed one and a half millimetres wider than the nail. */
  static Stream<Edit> reamed(ObjectNode stage) {
    return nails(stage, "outerMm")
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    "canal reamed 1.5 mm wider than "
                        + StageParts.name(StageParts.implant(stage, i)),
                    nail -> nail.put("reamedMm", StageParts.number(nail.path("outerMm")) + OVER)));
  }

  /** Static locking. */
  static Stream<Edit> locked(ObjectNode stage) {
    return nails(stage, "bolts")
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    StageParts.name(StageParts.implant(stage, i)) + " locked statically",
                    nail -> nail.put("locking", "static")));
  }

  /** One more bolt beside the outermost one of an end. */
  static Stream<Edit> moreBolts(ObjectNode stage) {
    return nails(stage, "bolts")
        .boxed()
        .flatMap(
            i ->
                Stream.of("near", "far")
                    .filter(end -> ends(StageParts.implant(stage, i), end).size() > 0)
                    .map(
                        end ->
                            Edit.of(
                                stage,
                                i,
                                "one more bolt at the "
                                    + end
                                    + " end of "
                                    + StageParts.name(StageParts.implant(stage, i)),
                                nail -> bolt(nail, end))));
  }

  private static List<ObjectNode> ends(ObjectNode nail, String end) {
    return StageParts.each(nail.path("bolts"))
        .filter(bolt -> bolt.path("end").asString("").equals(end))
        .filter(bolt -> bolt.has("atMm"))
        .map(bolt -> (ObjectNode) bolt)
        .toList();
  }

  private static void bolt(ObjectNode nail, String end) {
    double sign = end.equals("near") ? -1 : 1;
    ObjectNode outermost =
        ends(nail, end).stream()
            .reduce((a, b) -> sign * (level(a) - level(b)) >= 0 ? a : b)
            .orElseThrow();
    ObjectNode more = outermost.deepCopy();
    more.remove(List.of("state", "stateDay"));
    more.put("atMm", level(outermost) + sign * APART);
    ((ArrayNode) nail.path("bolts")).add(more);
  }

  private static double level(JsonNode bolt) {
    return StageParts.number(bolt.path("atMm"));
  }

  private static IntStream nails(ObjectNode stage, String told) {
    return StageParts.implants(stage, "nail").filter(i -> StageParts.implant(stage, i).has(told));
  }
}
