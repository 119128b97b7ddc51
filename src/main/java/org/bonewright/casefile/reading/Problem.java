package org.bonewright.casefile.reading;

import java.util.Locale;
import java.util.Optional;

/**
 * One thing in a case file that is wrong, or that deserves a second look.
 *
 * @param pointer JSON pointer (RFC 6901) to the value, empty for the whole file; a missing field is
 *     pointed at where it would stand
 * @param found what was found, as words that follow "found"
 * @param allowed what is accepted, as words that follow "allowed"
 * @param severity whether the file can be used all the same
 * @param hint one sentence that may help, such as the nearest known name
 * @param place where it stands in the text, when the text is at hand
 */
public record Problem(
    String pointer,
    String found,
    String allowed,
    Severity severity,
    Optional<String> hint,
    Optional<Place> place) {

  /** Whether a file with a problem can be used. */
  public enum Severity {
    /** The file is refused. */
    ERROR,
    /** The file is accepted; a person should look at this. */
    WARNING
  }

  /** Return an error without hint and place. */
  public static Problem error(String pointer, String found, String allowed) {
    return of(pointer, found, allowed, Severity.ERROR);
  }

  /** Return a warning without hint and place. */
  public static Problem warning(String pointer, String found, String allowed) {
    return of(pointer, found, allowed, Severity.WARNING);
  }

  private static Problem of(String pointer, String found, String allowed, Severity severity) {
    return new Problem(pointer, found, allowed, severity, Optional.empty(), Optional.empty());
  }

  /** Return the pointer to a field or an element below another one, escaped as RFC 6901 says. */
  public static String pointer(String above, String name) {
    return above + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** Return the same problem with this hint, a full sentence. */
  public Problem withHint(String sentence) {
    return new Problem(pointer, found, allowed, severity, Optional.of(sentence), place);
  }

  /** Return the same problem at this place of the text. */
  public Problem at(Place where) {
    return new Problem(pointer, found, allowed, severity, hint, Optional.of(where));
  }

  /** Return whether the file is refused because of this. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /**
   * Return the problem as one paragraph of plain text, for example {@code Error at /bone/side (line
   * 4, column 13): found the text "lefft"; allowed: one of left, right. Did you mean "left"?}
   */
  public String inWords() {
    String word = severity.name().charAt(0) + severity.name().substring(1).toLowerCase(Locale.ROOT);
    String where = pointer.isEmpty() ? " in the file" : " at " + pointer;
    return word
        + where
        + place.map(p -> " (" + p + ")").orElse("")
        + ": found "
        + found
        + "; allowed: "
        + allowed
        + "."
        + hint.map(h -> " " + h).orElse("");
  }
}
