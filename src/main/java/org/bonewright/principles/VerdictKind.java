package org.bonewright.principles;

import java.util.Locale;
import org.bonewright.measures.Words;

/** The four verdicts. */
public enum VerdictKind {
  MET,
  UNMET,
  UNKNOWN,
  NOT_APPLICABLE;

  /** Return the verdict of this name as written in cards. */
  public static VerdictKind of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** Return the name as written in cards and texts. */
  public String word() {
    return Words.written(this);
  }
}
