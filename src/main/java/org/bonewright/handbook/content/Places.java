package org.bonewright.handbook.content;

import java.text.Normalizer;
import java.util.Locale;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Family;
import org.bonewright.principles.Promise;

/** Where everything stands in the handbook. */
final class Places {

  static final String INDEX = "index";
  static final String MEASURES = "measures";
  static final String MOVES = "remedies";
  static final String FAILURES = "failures";
  static final String SOURCES = "bibliography";
  static final String GLOSSARY = "glossary";
  static final String HISTORY = "history";

  private Places() {}

  static String path(Card card) {
    return "principles/" + card.id();
  }

  static String path(Promise promise) {
    return "promises/" + promise.id();
  }

  static Target of(Card card) {
    return Target.page(path(card));
  }

  static Text link(Card card) {
    return Text.link(card.title(), of(card));
  }

  static Text link(Promise promise) {
    return Text.link(promise.title(), Target.page(path(promise)));
  }

  static Target of(Definition measure) {
    return new Target(MEASURES, measure.id());
  }

  static Text link(Definition measure) {
    return Text.link(measure.title(), of(measure));
  }

  static Target of(Family family) {
    return new Target(INDEX, "family-" + family.id());
  }

  static Target move(String id) {
    return new Target(MOVES, id);
  }

  static Target term(String name) {
    return new Target(GLOSSARY, anchor(name));
  }

  /** Return a name for a place: letters a to z, digits and hyphens. */
  static String anchor(String words) {
    String plain = sorted(words).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return plain.length() <= MOST_LETTERS ? plain : plain.substring(0, MOST_LETTERS);
  }

  private static final int MOST_LETTERS = 60;

  /** Return words as they are put in order: without case and accents. */
  static String sorted(String words) {
    return Normalizer.normalize(words, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT);
  }
}
