package org.bonewright.principles;

import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The table of all cells: every world of every card, judged once by the rules as built. */
final class AllCells {

  /** Where tests that take every principle in turn get them from, for {@code @MethodSource}. */
  static final String NAMED = "org.bonewright.principles.AllCells#named";

  static final RuleSet RULES = RuleSet.built();

  private static final Map<String, List<World>> WORLDS = new LinkedHashMap<>();
  private static final Verdicts SAID;

  static {
    List<World> all = new ArrayList<>();
    for (Card card : RULES.cards()) {
      List<World> worlds = RULES.worlds(card).all();
      WORLDS.put(card.id(), worlds);
      all.addAll(worlds);
    }
    SAID = RULES.rules().judge(all);
  }

  private AllCells() {}

  static Collection<Card> cards() {
    return RULES.cards();
  }

  /** Return every card under its id. */
  static Stream<Arguments> named() {
    return cards().stream().map(card -> argumentSet(card.id(), card));
  }

  /** Return every world of a card. */
  static List<World> of(Card card) {
    return WORLDS.getOrDefault(card.id(), List.of());
  }

  /** Return every world of every card. */
  static List<World> all() {
    return WORLDS.values().stream().flatMap(List::stream).collect(Collectors.toList());
  }

  /** Return what the rules say of a world of the table. */
  static WorldVerdict said(World world) {
    return SAID.of(world);
  }

  /** Return a world in words, for messages. */
  static String shown(Card card, World world) {
    return card.needs().keySet().stream()
        .map(need -> need + "=" + world.cell(need).shown())
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
