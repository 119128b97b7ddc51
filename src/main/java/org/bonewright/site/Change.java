package org.bonewright.site;

/** What a change of a limit and one of a severity have in common. */
interface Change extends Grounded {

  /** Return the id of the principle. */
  String principle();
}
