package org.bonewright.site;

import org.bonewright.principles.LocalLimit;

/** What a change of a limit and one of a severity have in common. */
interface Change {

  /** Return the id of the principle. */
  String principle();

  /** Return why. */
  String reason();

  /** Return the role of who answers for it. */
  String by();

  /** Return the day, as an ISO date. */
  String on();

  /** Return what it rests on. */
  default LocalLimit.Grounds grounds() {
    return new LocalLimit.Grounds(reason(), by(), on());
  }
}
