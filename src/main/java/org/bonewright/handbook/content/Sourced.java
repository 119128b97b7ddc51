package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.Prognosis;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;

/**
 * Every source once. Sources are one where their words up to the first colon are the same: that is
 * where author, place and year stand; what follows is what it says.
 */
final class Sourced {

  /**
   * One source.
   *
   * @param anchor its place in the bibliography
   * @param head author, place and year, or all that is told
   * @param read whether an abstract or excerpt was read; else it is cited from memory
   * @param uses what it is cited for
   */
  record Work(String anchor, String head, boolean read, List<Use> uses) {}

  /**
   * One citation.
   *
   * @param says what the source says, empty where the card does not tell
   * @param by who cites it
   */
  record Use(String says, Text by) {}

  private static final int LONGEST_HEAD = 120;

  private final Map<String, Work> works = new LinkedHashMap<>();

  Sourced(RuleSet rules) {
    Map<String, Work> found = new TreeMap<>();
    for (Card card : rules.cards()) {
      card.sources().forEach(source -> add(found, source, Places.link(card)));
    }
    for (Promise promise : rules.promises()) {
      promise.sources().forEach(source -> add(found, source, Places.link(promise)));
    }
    Text published = Text.link("Published results", new Target(Places.FAILURES, "published"));
    for (Prognosis.Entry entry : rules.prognosis().entries()) {
      add(found, entry.source(), published);
    }
    works.putAll(found);
  }

  /** Return the works of one kind, in the order of the alphabet. */
  List<Work> works(boolean read) {
    return works.values().stream().filter(work -> work.read() == read).toList();
  }

  /** Return where a source stands in the bibliography. */
  Target place(Card.Source source) {
    Work work = works.get(key(source));
    if (work == null) {
      throw new IllegalStateException("not in the bibliography: " + source.text());
    }
    return new Target(Places.SOURCES, work.anchor());
  }

  private static void add(Map<String, Work> found, Card.Source source, Text by) {
    String key = key(source);
    Work work =
        found.computeIfAbsent(
            key, k -> new Work(anchor(found, key), head(source), source.read(), new ArrayList<>()));
    Use use = new Use(says(source), by);
    if (!work.uses().contains(use)) {
      work.uses().add(use);
    }
  }

  private static String anchor(Map<String, Work> found, String key) {
    String plain = Places.anchor(key);
    long same = found.values().stream().filter(w -> w.anchor().matches(plain + "(-\\d+)?")).count();
    return same == 0 ? plain : plain + "-" + (same + 1);
  }

  private static String key(Card.Source source) {
    return Places.sorted(head(source)) + (source.read() ? " read" : " memory");
  }

  private static int split(String text) {
    int colon = text.indexOf(": ");
    return colon > 0 && colon < LONGEST_HEAD ? colon : -1;
  }

  /** Return author, place and year of a source, or all that is told. */
  static String head(Card.Source source) {
    int split = split(source.text());
    return split < 0 ? source.text() : source.text().substring(0, split);
  }

  /** Return what a source says, empty where the card does not tell. */
  static String says(Card.Source source) {
    int split = split(source.text());
    return split < 0 ? "" : source.text().substring(split + 2);
  }
}
