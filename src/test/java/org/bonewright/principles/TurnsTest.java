package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.principles.MovingGap.FEMUR;
import static org.bonewright.principles.MovingGap.OPEN;
import static org.bonewright.principles.MovingGap.STILL;
import static org.bonewright.principles.MovingGap.WIDE;
import static org.bonewright.principles.MovingGap.WORLDS;
import static org.bonewright.principles.MovingGap.YES;
import static org.bonewright.principles.MovingGap.gap;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.measures.Reading;
import org.junit.jupiter.api.Test;

/** What would turn a verdict: one number alone, as little as possible, down or up. */
class TurnsTest {

  private static List<String> turns(VerdictKind verdict, Reading gap, Reading slip) {
    return turns(verdict, Map.of("bone", FEMUR, "plate", YES, "gap", gap, "slip", slip));
  }

  private static List<String> turns(VerdictKind verdict, Map<String, Reading> readings) {
    Map<String, Reading> all = new TreeMap<>(readings);
    List<World> worlds = WORLDS.of(all);
    Map<String, List<World>> neighbours = Turns.neighbours(WORLDS, worlds, all);
    Verdicts said = new Verdicts();
    worlds.forEach(world -> MovingGap.say(world, said));
    neighbours.values().forEach(line -> line.forEach(world -> MovingGap.say(world, said)));
    return Turns.of(verdict, worlds, neighbours, said).stream()
        .map(turn -> turn.need() + " " + turn.to() + " " + turn.verdict())
        .toList();
  }

  private static Reading number(double value) {
    return Reading.number(value, "");
  }

  @Test
  void each_number_turns_it_at_the_nearest_value() {
    assertThat(turns(VerdictKind.UNMET, number(WIDE), number(2)))
        .containsExactly("gap 2 MET", "slip 1 MET");
  }

  @Test
  void what_stays_the_same_on_the_way_is_passed_over() {
    assertThat(turns(VerdictKind.UNMET, number(OPEN), number(0))).containsExactly("gap 5 MET");
    assertThat(turns(VerdictKind.NOT_APPLICABLE, number(STILL), number(2)))
        .containsExactly("gap between 0.1 and 2 MET");
  }

  @Test
  void it_may_turn_both_ways() {
    assertThat(turns(VerdictKind.MET, number(1), number(2)))
        .containsExactly("gap 0.1 NOT_APPLICABLE", "gap between 2 and 5 UNMET");
  }

  @Test
  void nobody_turns_what_a_model_samples() {
    assertThat(turns(VerdictKind.UNMET, gap(10, WIDE), number(2))).containsExactly("slip 1 MET");
  }

  @Test
  void nothing_is_told_to_turn_where_something_is_not_known() {
    assertThat(
            turns(
                VerdictKind.UNMET,
                Map.of(
                    "bone", Reading.unknown(MovingGap.BONE),
                    "plate", YES,
                    "gap", number(WIDE),
                    "slip", number(2))))
        .isEmpty();
  }
}
