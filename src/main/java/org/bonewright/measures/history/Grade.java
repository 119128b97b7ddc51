package org.bonewright.measures.history;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** An answer that may not be known. */
enum Grade {
  YES,
  NO,
  UNKNOWN;

  /** Return the answer to a question that is known. */
  static Grade of(boolean yes) {
    return yes ? YES : NO;
  }

  /** Return whether any of them is so: yes if one is, no if none is, else unknown. */
  static Grade or(Grade... any) {
    List<Grade> all = Arrays.asList(any);
    return all.contains(YES) ? YES : all.contains(UNKNOWN) ? UNKNOWN : NO;
  }

  /** Return yes or no; empty where it is not known. */
  Optional<Boolean> asAnswer() {
    return this == UNKNOWN ? Optional.empty() : Optional.of(this == YES);
  }
}
