package org.bonewright.measures;

import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;

/** How a number is written in the working of a measure. */
public final class Numbers {

  private Numbers() {}

  /** Return a number, or the range that it may have, without a unit. */
  public static String shown(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }
}
