package org.bonewright.measures.force;

import org.bonewright.measures.Words;

/**
 * How a construct lets go of the bone.
 *
 * @param share of the permitted load at which it does, 0 to {@link #MOST}
 * @param mode how
 */
record LetGo(double share, Mode mode) {

  /** What bears so many times the load counts as holding; see {@code HoldOutOfConstruct}. */
  static final double MOST = 64;

  LetGo {
    share = Math.max(0, Math.min(MOST, share));
  }

  /** How it lets go. */
  enum Mode {
    /** Once the first screw is pulled out, the next ones follow under less load. */
    UNZIPS,
    /** Locked screws strip together. */
    TOGETHER,
    /** The plate slips, or the fragments come off each other, before a screw is pulled out. */
    SLIPS,
    /** The rest bears more once the first screw is out, or none is pulled out at all. */
    HOLDS;

    /** Return it as a word. */
    String word() {
      return Words.written(this);
    }
  }

  /** Return the one that lets go earlier. */
  LetGo orEarlier(LetGo other) {
    return other.share < share ? other : this;
  }
}
