package org.bonewright.casefile.checking;

import org.bonewright.casefile.reading.Problem;

/**
 * A place in a case file.
 *
 * @param pointer the JSON pointer to it
 */
record At(String pointer) {

  /** The whole file. */
  static final At FILE = new At("");

  /** Return the place of a field in the group that stands here. */
  At field(String name) {
    return new At(Problem.pointer(pointer, name));
  }

  /** Return the place of an element in the list that stands here; the first one is 0. */
  At item(int index) {
    return field(Integer.toString(index));
  }
}
