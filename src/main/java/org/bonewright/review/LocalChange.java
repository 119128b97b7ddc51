package org.bonewright.review;

import java.util.Optional;

/**
 * A limit, a severity or the loads of a bone that a site has set, beside what is published.
 *
 * @param principle id of the principle; empty for the loads of a bone
 * @param title its title, or whose loads they are
 * @param what what is changed: a limit by its measure, words and name, a severity, or loads
 * @param local the local value, with its unit
 * @param published the published value, with its unit
 * @param reason why
 * @param by the role that answers for it
 * @param on the day, as an ISO date
 */
public record LocalChange(
    Optional<String> principle,
    String title,
    String what,
    String local,
    String published,
    String reason,
    String by,
    String on) {

  /** Return both values and the grounds, without the principle. */
  public String inWords() {
    String why = reason.strip().replaceFirst("\\.$", "");
    return what + " " + local + " here, published " + published + ". " + why + grounds();
  }

  /** Return whether it changes the card of this principle. */
  public boolean isOf(String id) {
    return principle.equals(Optional.of(id));
  }

  private String grounds() {
    return " (" + by + ", " + on + ")";
  }
}
