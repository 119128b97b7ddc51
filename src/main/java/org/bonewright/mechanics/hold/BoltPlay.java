package org.bonewright.mechanics.hold;

/**
 * How far a nail moves before its bolts hold it: the hole is wider than the bolt. It is no
 * stiffness and is told apart from that. Both numbers hold either way from the middle; at the end
 * of the nail that has least of it.
 *
 * @param hole diameter of the hole in mm, at least that of the bolt
 * @param bolt diameter of the bolt in mm, above zero
 * @param nail diameter of the nail in mm, above that of the hole
 */
public record BoltPlay(double hole, double bolt, double nail) {

  /** Return how far the nail slides along the bone, in mm either way. */
  public double along() {
    return (hole - bolt) / 2;
  }

  /** Return how far it turns about the bone, in degrees either way: the slack over the nail. */
  public double turns() {
    return Math.toDegrees((hole - bolt) / nail);
  }
}
