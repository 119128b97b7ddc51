package org.bonewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bonewright.principles.Severity;
import org.bonewright.review.Line;

/** The titles of several lines, the gravest first, each severity named once. */
final class TitlesBySeverity {

  private TitlesBySeverity() {}

  /** Return the titles, such as {@code MAJOR: A; B. minor: C}; empty where there is no line. */
  static String of(List<Line> lines) {
    List<Severity> severities =
        lines.stream()
            .map(TitlesBySeverity::severity)
            .distinct()
            .sorted(Comparator.reverseOrder())
            .toList();
    List<String> parts = new ArrayList<>();
    for (Severity severity : severities) {
      List<String> titles =
          lines.stream()
              .filter(line -> severity(line) == severity)
              .map(LocalText::title)
              .distinct()
              .toList();
      parts.add(word(severity) + ": " + String.join("; ", titles));
    }
    return String.join(". ", parts);
  }

  /**
   * Return what is open at worst: the first titles of the gravest, the rest by number.
   *
   * @param most how many titles to name
   */
  static String atWorst(List<Line> open, int most) {
    List<Line> gravestFirst =
        open.stream()
            .filter(line -> severity(line).compareTo(Severity.MAJOR) >= 0)
            .sorted(Comparator.comparing(TitlesBySeverity::severity).reversed())
            .toList();
    List<Line> named = gravestFirst.stream().limit(most).toList();
    List<String> parts = new ArrayList<>();
    if (!named.isEmpty()) {
      parts.add("at worst " + of(named));
    }
    int more = gravestFirst.size() - named.size();
    if (more > 0) {
      parts.add(more + " more " + severity(gravestFirst.get(most)).word());
    }
    int mild = open.size() - gravestFirst.size();
    if (mild > 0) {
      parts.add(parts.isEmpty() ? mild + ", minor at worst" : mild + " more minor");
    }
    return String.join("; ", parts);
  }

  private static Severity severity(Line line) {
    return line.severity().orElse(Severity.NOTE);
  }

  /** The severity as a word that stands out without colour: milder ones in small letters. */
  static String word(Severity severity) {
    return severity.compareTo(Severity.MAJOR) >= 0 ? severity.name() : severity.word();
  }
}
