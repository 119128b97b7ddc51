package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What remedies do, which of them pull against each other, and how that is settled.
 *
 * @param words what each move is, by its id
 * @param opposed pairs of moves that cannot both be made
 * @param tensions pairs of principles whose remedies are opposed
 */
public record Moves(Map<String, String> words, List<Set<String>> opposed, List<Tension> tensions) {

  /**
   * Two principles whose remedies pull against each other.
   *
   * @param between ids of the two principles
   * @param settled how a plan can do justice to both, or which goes first
   */
  public record Tension(Set<String> between, String settled) {}

  public Moves {
    words = Map.copyOf(words);
    opposed = List.copyOf(opposed);
    tensions = List.copyOf(tensions);
  }

  /**
   * Read the list of moves.
   *
   * @throws IllegalStateException if a field is missing or unknown, or a pair is none
   */
  static Moves read(String yaml) {
    CardText text = CardText.of(yaml, "moves");
    Map<String, String> words = new TreeMap<>(text.named("moves"));
    List<Set<String>> opposed = new ArrayList<>();
    for (CardText part : text.parts("opposed")) {
      opposed.add(pair(part, "moves"));
      part.done();
    }
    List<Tension> tensions = new ArrayList<>();
    for (CardText part : text.parts("tensions")) {
      String one = part.text("between");
      String settled = part.text("settled");
      for (String other : part.texts("and")) {
        tensions.add(new Tension(Set.of(one, other), settled));
      }
      part.done();
    }
    text.done();
    return new Moves(words, opposed, tensions);
  }

  private static Set<String> pair(CardText part, String field) {
    List<String> names = part.texts(field);
    if (names.size() != 2 || names.get(0).equals(names.get(1))) {
      throw new IllegalStateException("no pair: " + names);
    }
    return Set.copyOf(names);
  }

  /** Return whether one card's remedy would undo what another's does. */
  boolean pullApart(Card one, Card other) {
    return opposed.stream().anyMatch(pair -> splits(pair, one, other));
  }

  private static boolean splits(Set<String> pair, Card one, Card other) {
    List<String> moves = List.copyOf(pair);
    return (one.remedyMoves().contains(moves.get(0)) && other.remedyMoves().contains(moves.get(1)))
        || (one.remedyMoves().contains(moves.get(1)) && other.remedyMoves().contains(moves.get(0)));
  }
}
