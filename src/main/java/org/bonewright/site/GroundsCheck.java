package org.bonewright.site;

import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Quoted;
import org.bonewright.casefile.reading.ReadPart;

/** Whether a change names a role, not a name, and a day that exists. */
final class GroundsCheck {

  /** A title before a name: whoever it is, the role is asked for. */
  private static final Pattern NAME =
      Pattern.compile("(?i)\\b(dr|prof|professor|mr|mrs|ms|miss)\\b\\.?\\s+\\p{Lu}.*");

  private GroundsCheck() {}

  /** Return every problem. */
  static List<Problem> problems(ReadPart part, Grounded change) {
    List<Problem> problems = new ArrayList<>();
    if (NAME.matcher(change.by()).find()) {
      problems.add(
          part.error(
              "by",
              "the text " + Quoted.of(change.by()),
              "a role, such as head of trauma surgery"));
    }
    try {
      DateTimeFormatter.ISO_LOCAL_DATE.parse(change.on());
    } catch (DateTimeException impossible) {
      problems.add(part.error("on", "the text " + Quoted.of(change.on()), "a day that exists"));
    }
    return problems;
  }
}
