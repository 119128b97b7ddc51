package org.bonewright.measures.force;

/** Keeps bolts, pins and rests off the ends of the fragments. */
final class FromLine {

  /** How far they keep from the end of a fragment, mm. */
  static final double EDGE = 1;

  private FromLine() {}

  /**
   * Return the level of something in a fragment, moved away from the line where it is too near.
   *
   * @param at mm from the middle of the line
   * @param gap between the fragments in mm
   */
  static double kept(double at, double gap) {
    return Math.copySign(Math.max(Math.abs(at), gap / 2 + EDGE), at);
  }
}
