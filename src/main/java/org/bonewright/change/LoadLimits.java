package org.bonewright.change;

import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The load limits of a stage, which are only ever made lower or longer. */
final class LoadLimits {

  private static final String UNTIL = "untilDay";
  private static final String LIMIT = "limitKg";

  private final ObjectNode stage;

  LoadLimits(ObjectNode stage) {
    this.stage = stage;
  }

  private record Step(JsonNode until, JsonNode limit) {

    double day() {
      return StageParts.number(until);
    }
  }

  /** Let no day up to this one have a limit above this one. */
  void lower(int days, int kg) {
    List<Step> before =
        StageParts.each(stage.path("aftercare").path("load"))
            .map(step -> new Step(step.path(UNTIL), step.path(LIMIT)))
            .toList();
    ArrayNode load = stage.withObjectProperty("aftercare").putArray("load");
    double from = 0;
    for (Step step : before) {
      if (from >= days || keeps(step.limit(), kg)) {
        add(load, step.until(), step.limit());
      } else if (step.day() <= days) {
        add(load, step.until(), load.numberNode(kg));
      } else {
        add(load, load.numberNode(days), load.numberNode(kg));
        add(load, step.until(), step.limit());
      }
      from = Math.max(from, step.day());
    }
    if (from < days) {
      add(load, load.numberNode(days), load.numberNode(kg));
    }
  }

  private static boolean keeps(JsonNode limit, int kg) {
    return (limit.isObject() ? limit.path("max") : limit).asDouble() <= kg;
  }

  private static void add(ArrayNode load, JsonNode until, JsonNode limit) {
    ObjectNode step = load.addObject();
    step.set(UNTIL, until);
    step.set(LIMIT, limit);
  }
}
