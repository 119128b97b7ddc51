package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where there is nothing to measure, no rule finds fault with it. */
class NothingThereTest {

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_world_in_which_a_need_is_nothing_can_be_judged(Card card) {
    for (String need : card.needs().keySet()) {
      assertThatCode(() -> AllCells.RULES.rules().judge(without(card, need).values()))
          .as(card.id() + " without " + need)
          .doesNotThrowAnyException();
    }
  }

  /** A number that does not exist fails no comparison: at worst the verdict is the mildest. */
  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_number_that_does_not_exist_never_makes_a_verdict_worse(Card card) {
    Set<String> worse = new HashSet<>();
    for (String need : card.needs().keySet()) {
      if (AllCells.RULES.definition(card.needs().get(need)).domain() instanceof Numbers) {
        Map<Map<String, Cell>, World> without = without(card, need);
        Verdicts said = AllCells.RULES.rules().judge(without.values());
        for (World world : AllCells.of(card)) {
          World none = without.get(values(world, need));
          if (isWorse(said.of(none), AllCells.said(world))) {
            worse.add(need + " " + said.of(none) + " in " + AllCells.shown(card, none));
          }
        }
      }
    }
    assertThat(worse.stream().limit(3)).as(card.id()).isEmpty();
  }

  /** Return the worlds in which one need is nothing, by the values that they have. */
  private static Map<Map<String, Cell>, World> without(Card card, String need) {
    Map<Map<String, Cell>, World> worlds = new HashMap<>();
    for (World world : AllCells.of(card)) {
      worlds.computeIfAbsent(values(world, need), values -> PlainWorld.of(card, values));
    }
    return worlds;
  }

  private static Map<String, Cell> values(World world, String need) {
    Map<String, Cell> values = new TreeMap<>(world.cells());
    values.put(need, PlainWorld.none());
    return values;
  }

  private static boolean isWorse(WorldVerdict one, WorldVerdict other) {
    return one.kind() == VerdictKind.UNMET
        && (other.kind() != VerdictKind.UNMET || one.severity().compareTo(other.severity()) > 0);
  }
}
