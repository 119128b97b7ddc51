package org.bonewright.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that write into the plan as a whole, not into one of its stages. */
final class PlanMoves {

  private static final String RESULT_PATH = "resultPath";

  /** Usual ones, from memory; the card on triggers names them. */
  private static final List<String> TRIGGERS =
      List.of(
          "metal loose or broken",
          "line wider by 1 mm",
          "angle changed by 5 degrees",
          "no progress on two sets of films after week 12",
          "any sign of infection");

  private static final Map<String, Move> MOVES =
      Map.of("set-aftercare", PlanMoves::triggers, "result-path", PlanMoves::resultPath);

  private static final Map<String, SettingMove> IN_ITS_SETTING =
      Map.of(InfectionStages.MOVE, InfectionStages::edits);

  private final Setting setting;

  PlanMoves(Setting setting) {
    this.setting = setting;
  }

  /** Return a move by its name in the cards; empty where it does not write into the plan. */
  Optional<Move> of(String move) {
    return Optional.ofNullable(MOVES.get(move))
        .or(
            () ->
                Optional.ofNullable(IN_ITS_SETTING.get(move))
                    .map(ways -> plan -> ways.edits(plan, setting)));
  }

  /** Return the names of all of them. */
  static Set<String> names() {
    Set<String> names = new TreeSet<>(MOVES.keySet());
    names.addAll(IN_ITS_SETTING.keySet());
    return names;
  }

  private static Stream<Edit> triggers(ObjectNode plan) {
    return plan.path("triggers").isEmpty()
        ? Stream.of(
            Edit.of(
                plan,
                "named beforehand what would lead to acting again: " + String.join(", ", TRIGGERS),
                changed -> {
                  ArrayNode triggers = changed.putArray("triggers");
                  TRIGGERS.forEach(triggers::add);
                }))
        : Stream.empty();
  }

  private static Stream<Edit> resultPath(ObjectNode plan) {
    return plan.path(RESULT_PATH).asString("").isBlank()
        ? Stream.of(
            Edit.of(
                plan,
                "settled beforehand who reads the cultures on days 2, 7 and 14, and what follows if"
                    + " two grow alike",
                changed ->
                    changed.put(
                        RESULT_PATH,
                        "The surgeon in charge reads the cultures on days 2, 7 and 14; if two grow"
                            + " alike, the infection team hears of it the same day.")))
        : Stream.empty();
  }
}
