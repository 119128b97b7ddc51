package org.bonewright.principles;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A principle that has no card yet, since something it needs does not exist. The list of principles
 * names it, so that nobody takes silence for a verdict; nothing else knows of it.
 *
 * @param id the id that its card will have
 * @param family its family
 * @param title a few words
 * @param waitsFor what is missing, as it ends "waits for"
 */
public record Waiting(String id, Family family, String title, String waitsFor) {

  /**
   * Read the list.
   *
   * @param families the families by id
   * @param judged ids of the principles that have a card
   * @throws IllegalStateException if a field is missing or unknown, the family is none, an id
   *     stands twice or has a card
   */
  static List<Waiting> read(String yaml, Map<String, Family> families, Set<String> judged) {
    CardText text = CardText.of(yaml, "waiting");
    Set<String> taken = new TreeSet<>(judged);
    List<Waiting> waiting =
        text.parts("waiting").stream().map(part -> one(part, families)).toList();
    text.done();
    for (Waiting one : waiting) {
      if (!taken.add(one.id())) {
        throw new IllegalStateException(one.id() + " is judged, or waits twice");
      }
    }
    return waiting.stream()
        .sorted(Comparator.comparing((Waiting w) -> w.family().order()).thenComparing(Waiting::id))
        .toList();
  }

  private static Waiting one(CardText part, Map<String, Family> families) {
    Family family = families.get(part.text("family"));
    if (family == null) {
      throw new IllegalStateException("waiting: no family " + part.text("family"));
    }
    Waiting one = new Waiting(part.text("id"), family, part.text("title"), part.text("waitsFor"));
    part.done();
    return one;
  }
}
