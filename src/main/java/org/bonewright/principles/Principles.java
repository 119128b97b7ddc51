package org.bonewright.principles;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every principle and every promise of the program, in the order of families, then of ids. */
final class Principles {

  private static final String FAMILIES = "families.yaml";

  private final List<Family> allFamilies;
  private final Map<String, Family> families;
  private final Map<String, Promise> promises;
  private final Map<String, Card> cards = new LinkedHashMap<>();

  private Principles(
      List<Family> allFamilies, Map<String, Family> families, Map<String, Promise> promises) {
    this.allFamilies = allFamilies;
    this.families = families;
    this.promises = promises;
  }

  /** Read them from their files. */
  static Principles read(RuleFiles files) {
    Map<String, Family> known = CardReader.families(files.read(FAMILIES));
    Principles principles =
        new Principles(
            known.values().stream().sorted(Comparator.comparing(Family::order)).toList(),
            new LinkedHashMap<>(),
            new LinkedHashMap<>());
    files.paths(".yaml").stream()
        .filter(path -> path.indexOf('/') > 0)
        .map(path -> found(files, known, path))
        .sorted(Comparator.comparing((Found f) -> f.family().order()).thenComparing(Found::id))
        .forEach(principles::take);
    return principles;
  }

  /** Return the same with other cards: with other limits, or fewer of them. */
  Principles with(Collection<Card> others) {
    Principles changed = new Principles(allFamilies, families, promises);
    others.forEach(card -> changed.cards.put(card.id(), card));
    return changed;
  }

  /**
   * A file of a principle or a promise, parsed once.
   *
   * @param family its family
   * @param id the id that its name gives
   * @param text what it says
   */
  private record Found(Family family, String id, CardText text) {}

  private static Found found(RuleFiles files, Map<String, Family> known, String path) {
    String file = path.substring(path.lastIndexOf('/') + 1);
    String id = file.substring(0, file.length() - ".yaml".length());
    Family family = known.get(path.substring(0, path.indexOf('/')));
    if (family == null) {
      throw new IllegalStateException(path + ": folder is no family of " + FAMILIES);
    }
    return new Found(family, id, CardText.of(files.read(path), id));
  }

  private void take(Found found) {
    if (families.put(found.id(), found.family()) != null) {
      throw new IllegalStateException("two principles " + found.id());
    }
    if (PromiseReader.isPromise(found.text())) {
      promises.put(found.id(), PromiseReader.read(found.id(), found.text()));
    } else {
      cards.put(found.id(), CardReader.read(found.id(), found.text()));
    }
  }

  List<Card> cards() {
    return List.copyOf(cards.values());
  }

  Optional<Card> card(String id) {
    return Optional.ofNullable(cards.get(id));
  }

  List<Promise> promises() {
    return List.copyOf(promises.values());
  }

  Optional<Promise> promise(String id) {
    return Optional.ofNullable(promises.get(id));
  }

  /**
   * Return the family of a principle or promise.
   *
   * @param what which of both, for the message
   * @throws IllegalArgumentException if there is no such
   */
  Family family(String what, String id) {
    Family family = families.get(id);
    if (family == null) {
      throw new IllegalArgumentException("no " + what + " " + id);
    }
    return family;
  }

  /** Return every family in order, also those that have no principle yet. */
  List<Family> families() {
    return allFamilies;
  }
}
