package org.bonewright.measures;

import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;

/** How a number is written in the working of a measure. */
final class Numbers {

  private Numbers() {}

  static String shown(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }
}
