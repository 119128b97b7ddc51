package org.bonewright.casefile;

/** The side of the body. */
public enum Side {
  LEFT,
  RIGHT,
  /** Only in a case after a published report that does not tell the side. */
  NOT_STATED
}
