package org.bonewright.measures.hold;

/** Whether something is so, as far as the case file tells. */
enum Certainty {
  YES,
  NO,
  OPEN;

  static Certainty of(boolean certainly, boolean possibly) {
    return certainly ? YES : possibly ? OPEN : NO;
  }

  /** Return whether both are so. */
  Certainty and(Certainty other) {
    return this == NO || other == NO ? NO : this == YES && other == YES ? YES : OPEN;
  }

  /** Return whether one of the two is so. */
  Certainty or(Certainty other) {
    return this == YES || other == YES ? YES : this == NO && other == NO ? NO : OPEN;
  }
}
