package org.bonewright.site;

import org.bonewright.principles.LocalLimit;

/** What every change of a site has: its grounds. */
interface Grounded {

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
