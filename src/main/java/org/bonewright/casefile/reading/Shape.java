package org.bonewright.casefile.reading;

import org.jspecify.annotations.Nullable;

/** What a value in the file must look like, and how it becomes a value of a record. */
interface Shape {

  /**
   * Return the value that was written; absent, with every problem in it noted, if it is unfit.
   * Whatever is wrong, the whole part is looked at.
   */
  @Nullable Object read(Spot spot);

  /** Return what is allowed, as words that follow "allowed". */
  String allowed();
}
