package org.bonewright.principles;

import java.util.Locale;
import org.bonewright.measures.Words;

/** How much an unmet principle matters, mildest first. */
public enum Severity {
  /** Information; never counts against an operation. */
  NOTE,
  /** A departure from usual practice that seldom fails by itself. */
  MINOR,
  /** A recognised cause of failure. */
  MAJOR,
  /** Safety of the patient, or a condition that usually ends in failure. */
  CRITICAL;

  /** Return the severity of this name. */
  public static Severity of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** Return the name as written in cards and texts. */
  public String word() {
    return Words.written(this);
  }

  /** Return the next severity up; critical stays critical. */
  public Severity raised() {
    return switch (this) {
      case NOTE -> MINOR;
      case MINOR -> MAJOR;
      case MAJOR, CRITICAL -> CRITICAL;
    };
  }

  /** Return the milder of the two. */
  public Severity atMost(Severity cap) {
    return compareTo(cap) <= 0 ? this : cap;
  }
}
