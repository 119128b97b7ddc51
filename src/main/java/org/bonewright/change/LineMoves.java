package org.bonewright.change;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bonewright.measures.Words;
import org.bonewright.shelf.StrutSizes;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that put something in at the line itself: strut, plug, lag screw, device. */
final class LineMoves {

  private static final String PLATE = "plate";
  private static final String LAG = "lag-screw";

  /** Steeper than this a line takes a lag screw; usual classification of shaft fractures. */
  private static final double STEEP = 30;

  /** A strut reaches so far beyond the zone on each side in mm; the card on struts asks for it. */
  private static final double BEYOND = 30;

  /** A strut fills so much of the canal at least; the card on struts asks for it. */
  private static final double FILL = 0.66;

  private LineMoves() {}

  /** A strut in the canal, the thickest that it takes, the shortest first that reaches. */
  static Stream<Edit> strut(ObjectNode stage, Setting setting) {
    OptionalDouble middle = setting.zoneMiddleMm();
    boolean taken =
        Stream.of("nail", "strut")
            .anyMatch(kind -> StageParts.implants(stage, kind).findAny().isPresent());
    if (middle.isEmpty() || taken || !stage.path("fixation").isArray()) {
      return Stream.empty();
    }
    double level = middle.getAsDouble();
    double needed =
        setting.zoneToMm().orElse(level) - setting.zoneFromMm().orElse(level) + 2 * BEYOND;
    OptionalDouble canal = setting.canalMm(level);
    return canal.isEmpty()
        ? Stream.empty()
        : setting.shelf().struts().stream()
            .flatMap(
                sizes ->
                    thickest(sizes, canal.getAsDouble()).stream()
                        .boxed()
                        .flatMap(
                            outer ->
                                sizes.lengthMm().stream()
                                    .filter(mm -> mm >= needed)
                                    .sorted()
                                    .limit(2)
                                    .map(mm -> strut(stage, sizes, outer, mm, level))));
  }

  private static OptionalDouble thickest(StrutSizes sizes, double canal) {
    return sizes.outerMm().stream()
        .mapToDouble(mm -> mm)
        .filter(mm -> mm < canal && mm >= FILL * canal)
        .max();
  }

  private static Edit strut(
      ObjectNode stage, StrutSizes sizes, double outer, double length, double middle) {
    return Edit.of(
        stage,
        "a strut ("
            + Words.of(sizes.origin())
            + ") of "
            + FileWords.number(outer)
            + " × "
            + FileWords.number(length)
            + " mm in the canal",
        changed ->
            ((ArrayNode) changed.path("fixation"))
                .addObject()
                .put("id", StageParts.freeName(stage, "strut"))
                .put("kind", "strut")
                .put("where", "intramedullary")
                .put("origin", Words.written(sizes.origin()))
                .put("fromMm", middle - length / 2)
                .put("toMm", middle + length / 2)
                .put("outerMm", outer));
  }

  /** A strut longer by 10, 20 or 30 mm at each end, as far as the shelf has it. */
  static Stream<Edit> longerStrut(ObjectNode stage, Setting setting) {
    return Stream.of(10, 20, 30)
        .flatMap(
            by ->
                StageParts.implants(stage, "strut")
                    .filter(i -> isKept(StageParts.implant(stage, i), by, setting))
                    .mapToObj(
                        i ->
                            Edit.of(
                                stage,
                                i,
                                StageParts.name(StageParts.implant(stage, i))
                                    + " longer by "
                                    + by
                                    + " mm at each end",
                                strut -> {
                                  strut.put("fromMm", mm(strut, "fromMm") - by);
                                  strut.put("toMm", mm(strut, "toMm") + by);
                                })));
  }

  private static boolean isKept(ObjectNode strut, int by, Setting setting) {
    double length = mm(strut, "toMm") - mm(strut, "fromMm") + 2 * by;
    return setting.shelf().struts().stream()
        .flatMap(sizes -> sizes.lengthMm().stream())
        .anyMatch(mm -> mm >= length);
  }

  private static double mm(ObjectNode strut, String field) {
    return StageParts.number(strut.path(field));
  }

  /** Plugs in the open holes over the line of a locking plate. */
  static Stream<Edit> plugs(ObjectNode stage, Setting setting) {
    return StageParts.implants(stage, PLATE)
        .filter(i -> setting.shelf().plugs())
        .filter(
            i ->
                Plates.family(StageParts.implant(stage, i)).filter(Plates::locks).isPresent()
                    && PlateChoices.openOverLine(StageParts.implant(stage, i))
                        .findAny()
                        .isPresent())
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    "plugs in the open holes over the line of "
                        + StageParts.name(StageParts.implant(stage, i)),
                    plate -> {
                      int[] open = PlateChoices.openOverLine(plate).toArray();
                      ArrayNode plugged = plate.withArrayProperty("plugged");
                      for (int hole : open) {
                        plugged.add(hole);
                      }
                    }));
  }

  /** A lag screw square to a steep line, with a gliding hole. */
  static Stream<Edit> lagScrew(ObjectNode stage, Setting setting) {
    boolean has = StageParts.implants(stage, LAG).findAny().isPresent();
    boolean steep = setting.obliquityDeg().orElse(0) >= STEEP;
    return has || !steep || !stage.path("fixation").isArray()
        ? Stream.empty()
        : setting.shelf().lagScrewMm().stream()
            .filter(mm -> setting.isArm() ? mm < 4 : mm > 3)
            .sorted()
            .map(
                mm ->
                    Edit.of(
                        stage,
                        "a lag screw of "
                            + FileWords.number(mm)
                            + " mm square to the line, with a gliding hole",
                        changed ->
                            ((ArrayNode) changed.path("fixation"))
                                .addObject()
                                .put("id", StageParts.freeName(stage, LAG))
                                .put("kind", LAG)
                                .put("diameterMm", mm)
                                .put("angleToLineDeg", 90)
                                .put("glidingHole", "yes")));
  }

  /** No lag screw. */
  static Stream<Edit> noLagScrew(ObjectNode stage) {
    return StageParts.implants(stage, LAG).findAny().isEmpty()
        ? Stream.empty()
        : Stream.of(
            Edit.of(
                stage,
                "no lag screw",
                changed -> {
                  ArrayNode left = changed.putArray("fixation");
                  for (JsonNode implant : stage.path("fixation")) {
                    if (!implant.path("kind").asString("").equals(LAG)) {
                      left.add(implant);
                    }
                  }
                }));
  }

  /** The line pressed by a tension device, before any screw locks. */
  static Stream<Edit> tensionDevice(ObjectNode stage, Setting setting) {
    boolean plated = StageParts.implants(stage, PLATE).findAny().isPresent();
    return plated && setting.shelf().tensionDevice()
        ? Stream.of(
            Edit.of(
                stage,
                "the line pressed by a tension device before any screw locks",
                changed ->
                    changed
                        .withObjectProperty("compression")
                        .put("method", "tension-device")
                        .put("beforeLocking", "yes")))
        : Stream.empty();
  }
}
