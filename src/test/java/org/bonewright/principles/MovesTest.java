package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class MovesTest {

  @Nested
  class OfTheRuleSet {

    private static final RuleSet RULES = RuleSet.built();
    private static final Moves MOVES = RULES.moves();

    @Test
    void every_move_of_a_card_is_named_and_every_named_one_is_used() {
      Set<String> used = new TreeSet<>();
      RULES.cards().forEach(card -> used.addAll(card.remedyMoves()));
      assertThat(used).isEqualTo(new TreeSet<>(MOVES.words().keySet()));
    }

    @Test
    void opposed_moves_are_moves() {
      assertThat(MOVES.opposed()).allMatch(pair -> MOVES.words().keySet().containsAll(pair));
    }

    @Test
    void remedies_that_pull_apart_are_declared_with_what_settles_them_and_no_others() {
      Set<Set<String>> declared = new HashSet<>();
      MOVES.tensions().forEach(tension -> assertThat(declared.add(tension.between())).isTrue());
      Set<Set<String>> found = new HashSet<>();
      List<Card> cards = new ArrayList<>(RULES.cards());
      for (int i = 0; i < cards.size(); i++) {
        for (int j = i + 1; j < cards.size(); j++) {
          if (MOVES.pullApart(cards.get(i), cards.get(j))) {
            found.add(Set.of(cards.get(i).id(), cards.get(j).id()));
          }
        }
      }
      assertThat(declared).isEqualTo(found);
    }

    @Test
    void no_card_pulls_against_itself() {
      assertThat(RULES.cards()).noneMatch(card -> MOVES.pullApart(card, card));
    }
  }

  @Nested
  class Refuses {

    @Test
    void a_pair_of_one() {
      assertThatThrownBy(() -> Moves.read("{moves: {a: do a}, opposed: [{moves: [a, a]}]}"))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("no pair");
    }

    @Test
    void a_field_that_does_nothing() {
      assertThatThrownBy(() -> Moves.read("{moves: {a: do a}, rank: 1}"))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("rank");
    }

    @Test
    void a_tension_that_nothing_settles() {
      assertThatThrownBy(() -> Moves.read("{tensions: [{between: a, and: [b]}]}"))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("settled");
    }
  }
}
