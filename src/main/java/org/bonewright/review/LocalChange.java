package org.bonewright.review;

/**
 * A limit or a severity that a site has set, beside the published one.
 *
 * @param principle id of the principle
 * @param title its title
 * @param what what is changed: a limit by its measure, words and name, or a severity
 * @param local the local value, with its unit
 * @param published the published value, with its unit
 * @param reason why
 * @param by the role that answers for it
 * @param on the day, as an ISO date
 */
public record LocalChange(
    String principle,
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

  private String grounds() {
    return " (" + by + ", " + on + ")";
  }
}
