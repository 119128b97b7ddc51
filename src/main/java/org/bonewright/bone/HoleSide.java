package org.bonewright.bone;

/** Where a plate hole lies with regard to the zone. */
public enum HoleSide {
  /** On the side of the landmark. */
  NEAR,
  /** Over the zone. */
  OVER,
  /** On the side away from the landmark. */
  FAR,
  /** On a side that the case file does not tell for certain. */
  UNSURE
}
