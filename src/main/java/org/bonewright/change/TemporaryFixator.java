package org.bonewright.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.casefile.BoneName;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A fixator on one side that holds thigh or shin for some weeks. In the arm a pin may meet the
 * radial nerve or the vessels; where it goes there, only a surgeon can say, so that none is drawn.
 *
 * @param side on which side of the bone its pins go in
 * @param levels levels in mm of its pins, in order
 */
record TemporaryFixator(String side, List<Double> levels) {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** So far from the ends of the bone a pin stays, in mm, clear of the joints; from memory. */
  private static final double FROM_END = 50;

  /** So far apart the innermost and the outermost pin of a side are at least, in mm; our choice. */
  private static final double LEAST_SPREAD = 40;

  private static final int PIN_MM = 5;

  /** Usual sides for pins; from memory. The first that bears no plate of the plan is taken. */
  private static final Map<BoneName, List<String>> SIDES =
      Map.of(
          BoneName.FEMUR, List.of("lateral", "anterolateral"),
          BoneName.TIBIA, List.of("anteromedial", "anterior"));

  /**
   * Return the ways to place one: two pins on each side of the zone, then three; 40 mm clear of the
   * zone, then 30.
   *
   * @param taken the surface on which the plan lays its plate, as a file writes it
   */
  static Stream<TemporaryFixator> ways(Setting setting, String taken) {
    Optional<String> side =
        setting.bone().map(name -> SIDES.getOrDefault(name, List.of())).stream()
            .flatMap(List::stream)
            .filter(each -> !each.equals(taken))
            .findFirst();
    return side.stream()
        .flatMap(
            on ->
                Stream.of(2, 3)
                    .flatMap(pins -> Stream.of(40, 30).map(clear -> levels(setting, pins, clear)))
                    .filter(levels -> !levels.isEmpty())
                    .map(levels -> new TemporaryFixator(on, levels)));
  }

  private static List<Double> levels(Setting setting, int pins, double clear) {
    double near = setting.zoneFromMm().orElse(0) - clear;
    double far = setting.zoneToMm().orElse(Double.MAX_VALUE) + clear;
    double last = setting.lengthMm().orElse(0) - FROM_END;
    if (near - FROM_END < LEAST_SPREAD || last - far < LEAST_SPREAD) {
      return List.of();
    }
    List<Double> levels = new ArrayList<>(spread(FROM_END, near, pins));
    levels.addAll(spread(far, last, pins));
    return List.copyOf(levels);
  }

  private static List<Double> spread(double from, double to, int pins) {
    return Stream.iterate(0, i -> i + 1)
        .limit(pins)
        .map(i -> Math.rint(from + i * (to - from) / (pins - 1)))
        .toList();
  }

  /** Return it as a file has it. */
  ObjectNode drawn(String id) {
    ObjectNode fixator =
        JSON.createObjectNode()
            .put("id", id)
            .put("kind", "external-fixator")
            .put("frame", "unilateral");
    ArrayNode pins = fixator.putArray("pins");
    levels.forEach(
        level ->
            pins.addObject().put("atMm", level).put("direction", side).put("diameterMm", PIN_MM));
    return fixator;
  }

  /** Return it in words. */
  String inWords() {
    return "a fixator, its pins "
        + Plates.surface(JSON.getNodeFactory().stringNode(side))
        + " at "
        + levels.stream().map(FileWords::number).collect(Collectors.joining(", "))
        + " mm";
  }
}
