package org.bonewright.drawing;

/** The two ways in which a bone is drawn. */
public enum View {
  /** From the side. */
  STRIP,
  /** The outer surface unrolled. */
  MAP
}
