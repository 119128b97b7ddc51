package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Tells on which needs it hangs what becomes of some worlds.
 *
 * @param <T> what becomes of a world
 */
final class Hinges<T> {

  private final Card card;
  private final List<World> worlds;
  private final List<T> outcomes;
  private final Map<String, Digits> numbered = new HashMap<>();

  /**
   * Prepare.
   *
   * @param card the card
   * @param worlds some of its worlds
   * @param outcomes what becomes of each
   */
  Hinges(Card card, List<World> worlds, List<T> outcomes) {
    this.card = card;
    this.worlds = worlds;
    this.outcomes = outcomes;
  }

  /**
   * Return whether it hangs on these needs alone. Where limits differ by words, so do the cells of
   * a number: two worlds may share a value of it without sharing a cell.
   */
  boolean areOnly(List<String> some) {
    Map<Long, T> byCells = new HashMap<>();
    List<Digits> digits = some.stream().map(this::digits).toList();
    for (int i = 0; i < worlds.size(); i++) {
      long key = 0;
      for (Digits need : digits) {
        key = need.after(key, i);
      }
      T outcome = outcomes.get(i);
      T before = byCells.putIfAbsent(key, outcome);
      if (before != null && !before.equals(outcome)) {
        return false;
      }
    }
    return !cutsDifferWithout(some) || agreeWhereTheyMeet(some);
  }

  /** The cells of a need, numbered, so that worlds can be compared by one number. */
  private static final class Digits {

    private final int[] ofWorld;
    private final int count;

    Digits(String need, List<World> worlds) {
      Map<Cell, Integer> numbers = new HashMap<>();
      ofWorld = new int[worlds.size()];
      for (int i = 0; i < ofWorld.length; i++) {
        Integer number = numbers.putIfAbsent(worlds.get(i).cell(need), numbers.size());
        ofWorld[i] = number == null ? numbers.size() - 1 : number;
      }
      count = numbers.size();
    }

    /** Return a number that tells both what it told before and the cell of this need. */
    long after(long key, int world) {
      return key * count + ofWorld[world];
    }
  }

  private Digits digits(String need) {
    return numbered.computeIfAbsent(need, n -> new Digits(n, worlds));
  }

  /** Return whether a word that is left out moves the limits by which numbers are cut. */
  private boolean cutsDifferWithout(List<String> some) {
    return card.limits().values().stream()
        .flatMap(limit -> limit.by().stream())
        .anyMatch(word -> !some.contains(word));
  }

  private boolean agreeWhereTheyMeet(List<String> some) {
    Map<List<Cell>, T> byCells = new LinkedHashMap<>();
    for (int i = 0; i < worlds.size(); i++) {
      byCells.put(worlds.get(i).cells(some), outcomes.get(i));
    }
    return byCells.entrySet().stream()
        .collect(Collectors.groupingBy(e -> e.getKey().stream().map(Cell::word).toList()))
        .values()
        .stream()
        .allMatch(this::sameWordsAgree);
  }

  /** Only worlds that end differently can disagree; most of them end alike. */
  private boolean sameWordsAgree(List<Map.Entry<List<Cell>, T>> sameWords) {
    Map<T, List<List<Cell>>> before = new HashMap<>();
    for (Map.Entry<List<Cell>, T> entry : sameWords) {
      for (Map.Entry<T, List<List<Cell>>> other : before.entrySet()) {
        if (!other.getKey().equals(entry.getValue())
            && other.getValue().stream().anyMatch(cells -> meet(cells, entry.getKey()))) {
          return false;
        }
      }
      before.computeIfAbsent(entry.getValue(), outcome -> new ArrayList<>()).add(entry.getKey());
    }
    return true;
  }

  private static boolean meet(List<Cell> one, List<Cell> other) {
    for (int i = 0; i < one.size(); i++) {
      if (one.get(i) instanceof Cell.Span span
          && other.get(i) instanceof Cell.Span second
          && !span.meets(second)) {
        return false;
      }
    }
    return true;
  }
}
