package org.bonewright.principles;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.principles.Card.Dispute;
import org.bonewright.principles.Card.Limit;
import org.bonewright.principles.Card.Say;
import org.bonewright.principles.Card.Source;
import org.bonewright.principles.Card.SubjectKind;
import org.bonewright.principles.Card.Told;

/**
 * Reads cards. A card is part of the program, so that a fault in one is an exception, not advice.
 */
final class CardReader {

  private CardReader() {}

  /**
   * Read a card.
   *
   * @param id the id that the file's name gives
   * @param text the text
   * @throws IllegalStateException if a field is missing, unknown or of the wrong type, or the id is
   *     not the file's name
   */
  static Card read(String id, CardText text) {
    if (!text.text("id").equals(id)) {
      throw new IllegalStateException(id + ": the id in the card is another");
    }
    if (!text.text("kind").equals("principle")) {
      throw new IllegalStateException(id + ": kind is not principle");
    }
    Card card =
        new Card(
            id,
            (int) text.number("level"),
            SubjectKind.valueOf(text.text("subject").toUpperCase(Locale.ROOT)),
            text.text("title"),
            text.text("statement"),
            text.text("cause"),
            text.named("needs"),
            limits(text),
            text.texts("grades").stream().map(Severity::of).toList(),
            Severity.of(text.text("highest")),
            text.texts("verdicts").stream().map(VerdictKind::of).toList(),
            text.yes("overridable"),
            text.text("why"),
            say(text.part("say").orElseThrow(() -> new IllegalStateException(id + ": no say"))),
            text.parts("tells").stream().map(CardReader::told).toList(),
            text.text("remedy"),
            text.texts("remedyMoves"),
            text.parts("sources").stream().map(CardReader::source).toList(),
            text.part("disputed").map(CardReader::dispute),
            text.texts("awaiting"),
            text.text("reviewedBy"),
            text.text("since"),
            text.texts("formerIds"),
            text.optionalText("deprecated"),
            text.optionalText("siteMayNotChange"));
    text.done();
    card.limits().keySet().stream()
        .filter(card.needs()::containsKey)
        .forEach(
            name -> {
              throw new IllegalStateException(id + ": a need and a limit are both called " + name);
            });
    card.tells().stream()
        .map(Card.Told::of)
        .filter(of -> card.needs().containsKey(of) || card.needs().containsValue(of))
        .forEach(
            of -> {
              throw new IllegalStateException(id + ": it judges what it only tells: " + of);
            });
    return card;
  }

  /** Read the list of families, in order. */
  static Map<String, Family> families(String yaml) {
    Map<String, Family> families = new TreeMap<>();
    CardText text = CardText.of(yaml, "families");
    for (CardText part : text.parts("families")) {
      String id = part.text("id");
      families.put(id, new Family(id, part.text("letter"), part.text("title"), families.size()));
      part.done();
    }
    text.done();
    return families;
  }

  private static Map<String, Limit> limits(CardText text) {
    Map<String, Limit> limits = new TreeMap<>();
    text.namedParts("limits").forEach((name, part) -> limits.put(name, limit(part)));
    return limits;
  }

  private static Limit limit(CardText text) {
    Map<String, Double> values = new TreeMap<>();
    if (text.isNumber("value")) {
      values.put("otherwise", text.number("value"));
    } else {
      CardText table =
          text.part("value").orElseThrow(() -> new IllegalStateException("limit without value"));
      table.fields().forEach(key -> values.put(key, table.number(key)));
      table.done();
    }
    Limit limit = new Limit(text.text("of"), text.texts("by"), values, text.text("evidence"));
    text.done();
    return limit;
  }

  private static Say say(CardText text) {
    Say say = new Say(text.text("met"), text.named("unmet"), text.text("notApplicable"));
    text.done();
    return say;
  }

  private static Told told(CardText text) {
    Told told =
        new Told(
            text.text("of"),
            text.texts("with").stream().map(VerdictKind::of).toList(),
            text.text("say"));
    text.done();
    return told;
  }

  static Source source(CardText text) {
    String read = text.text("read");
    if (!read.equals("excerpt") && !read.equals("from memory")) {
      throw new IllegalStateException("source is neither excerpt nor from memory: " + read);
    }
    Source source = new Source(text.text("text"), read.equals("excerpt"));
    text.done();
    return source;
  }

  private static Dispute dispute(CardText text) {
    Dispute dispute = new Dispute(text.texts("limits"), text.text("view"));
    text.done();
    return dispute;
  }
}
