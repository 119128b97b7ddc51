package org.bonewright.casefile;

/** The side of the body. */
public enum Side {
  LEFT,
  RIGHT
}
