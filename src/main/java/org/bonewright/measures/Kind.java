package org.bonewright.measures;

/** What kind of knowledge a reading is. */
public enum Kind {
  /** Stated in the case file, or computed from what is stated. */
  FACT,
  /**
   * Rests at least in part on a table default or a convention; always a range or choice of them.
   */
  ASSUMED,
  /** Whether the file states something: always known. */
  RECORD,
  /** Computed by a mechanical model under sampled assumptions. */
  MODEL
}
