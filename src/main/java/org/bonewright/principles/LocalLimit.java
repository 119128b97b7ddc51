package org.bonewright.principles;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A limit that a site has set instead of the published one.
 *
 * @param principle id of the principle
 * @param limit name of the limit
 * @param where the words for which it holds, joined by spaces; empty for a limit of a single value
 * @param value the local value, in the unit of the need that it cuts
 * @param published the published value for the same words
 * @param grounds why, by whom and when
 */
public record LocalLimit(
    String principle,
    String limit,
    Optional<String> where,
    double value,
    double published,
    Grounds grounds) {

  /**
   * What a change rests on.
   *
   * @param reason why
   * @param by the role that answers for it, not a name
   * @param on the day, as an ISO date
   */
  public record Grounds(String reason, String by, String on) {

    /** Return it in words, such as {@code reason (role, day)}. */
    public String inWords() {
      return reason.strip().replaceFirst("\\.$", "") + " (" + by + ", " + on + ")";
    }
  }

  /** Return the key under which the card keeps the value. */
  public String key() {
    return where.orElse(Card.Limit.OTHERWISE);
  }

  /** Return the card with this limit instead of its own. */
  public Card on(Card card) {
    Card.Limit old = card.limits().get(limit);
    if (old == null) {
      throw new IllegalArgumentException(card.id() + " has no limit " + limit);
    }
    Map<String, Double> values = new TreeMap<>(old.values());
    values.put(key(), value);
    Map<String, Card.Limit> limits = new TreeMap<>(card.limits());
    limits.put(limit, new Card.Limit(old.of(), old.by(), values, old.evidence()));
    return card.with(limits);
  }
}
