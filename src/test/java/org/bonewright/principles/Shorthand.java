package org.bonewright.principles;

import java.util.Map;
import java.util.stream.Collectors;
import org.bonewright.measures.Reading;

/**
 * How examples write a verdict: {@code met}, {@code not-applicable}, {@code unmet minor bridged},
 * {@code unmet minor to major bridgedLeast} where the severity is open, {@code unknown at worst
 * major}, and {@code unknown} alone where it cannot turn out unmet.
 */
final class Shorthand {

  private Shorthand() {}

  static String of(Verdict verdict) {
    String kind = verdict.kind().word();
    if (verdict instanceof Verdict.Unmet unmet) {
      String from = unmet.mildest() == unmet.severity() ? "" : unmet.mildest().word() + " to ";
      return kind + " " + from + unmet.severity().word() + " " + unmet.limit();
    }
    return verdict instanceof Verdict.Unknown unknown
            && unknown.possible().contains(VerdictKind.UNMET)
        ? kind + " at worst " + unknown.worst().word()
        : kind;
  }

  /** Return the kind of verdict that an expectation begins with. */
  static VerdictKind kind(String expectation) {
    return VerdictKind.of(expectation.replaceFirst(" .*", ""));
  }

  /** Return what was read, a line for each need, for the message of a failed example. */
  static String of(Map<String, Reading> readings) {
    return readings.entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue().shown() + " (" + e.getValue().working() + ")")
        .collect(Collectors.joining("\n  ", "\n  ", "\n"));
  }
}
